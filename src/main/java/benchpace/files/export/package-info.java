/**
 * A class as a table and as JSON, for programs other than this one: its events, and rows of what was reckoned of them,
 * under names that stay. Start at {@link benchpace.files.export.ClassFile}. Columns and keys are one list
 * ({@link benchpace.files.export.Column}); what they mean is in {@code src/docs/export.md}.
 */
package benchpace.files.export;
