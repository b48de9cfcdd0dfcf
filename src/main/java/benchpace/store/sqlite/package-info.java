/**
 * The one SQLite file: opened, locked, looked over, brought up to date. Plain JDBC; one connection writes, others read.
 * The tables are the numbered files in {@code src/main/resources/benchpace/store/sqlite}. Start at {@link
 * benchpace.store.sqlite.Database}.
 */
package benchpace.store.sqlite;
