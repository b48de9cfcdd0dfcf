/**
 * Who comes, and the demo class. Start at {@link benchpace.files.roster.Roster}.
 */
package benchpace.files.roster;
