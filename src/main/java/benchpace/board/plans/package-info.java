/**
 * The book of plans: the starter plans and the organiser's own, every saved version, and their files in the data
 * folder. The store is the truth, the files are copies of it to take along; nothing here knows a class. Start at
 * {@link benchpace.board.plans.PlanBook}.
 */
package benchpace.board.plans;
