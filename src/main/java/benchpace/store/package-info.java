/**
 * Floor 3: what outlives a restart: the events of every class, sessions, settings. Nothing here decides anything: a row
 * is written as it was given and read back equal. {@code sqlite} is the file they stand in. Start at {@link
 * benchpace.store.EventLog}.
 */
package benchpace.store;
