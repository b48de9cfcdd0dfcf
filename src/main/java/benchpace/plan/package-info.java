/**
 * Floor 0: what a class is going to be, before anybody sits down: the ordered steps, the table, vessels, waxes and
 * the activities of the wait. Values only: no clock, no files, nothing that happened. Start at {@link Plan}.
 */
package benchpace.plan;
