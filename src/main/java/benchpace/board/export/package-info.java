/**
 * What of a class goes into its file: its events, and every figure of the look back as a row. Start at
 * {@link benchpace.board.export.ExportedClass}. Not here: how a file is written ({@code files.export}).
 */
package benchpace.board.export;
