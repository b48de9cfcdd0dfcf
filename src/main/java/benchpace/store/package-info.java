/**
 * Floor 3: what outlives a restart, in one SQLite file: the events of every class, sessions, settings. Plain JDBC; one
 * connection writes, others read. Nothing here decides anything: a row is written as it was given and read back equal.
 * The tables are the numbered files in {@code src/main/resources/benchpace/store}. Start at {@link Database}, then
 * {@link EventLog}.
 */
package benchpace.store;
