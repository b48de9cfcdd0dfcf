/**
 * The pace of a running class: its taps as {@code pace} reads them, who is flagged, the pace lines, when everyone goes
 * home, and what past classes teach about the steps. Start at {@link benchpace.board.pacing.PosteriorPaceWatch}.
 */
package benchpace.board.pacing;
