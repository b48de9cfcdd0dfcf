/**
 * Floor 3: what stands in files and on the wire. Read strictly, telling every problem with its place, and written so
 * that it reads back equal. No database, no HTTP, no clock. Here is what all of it needs; {@code plan}, {@code log},
 * {@code cure}, {@code calendar} and {@code roster} are the kinds of file. Start at {@link benchpace.files.Fields};
 * {@link benchpace.files.Json} holds the one configured mapper.
 */
package benchpace.files;
