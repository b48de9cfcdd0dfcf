/**
 * A past class watched again, at a time of its own: in memory only, through the fold, the views and the models of any
 * class, and without a way to write anything. Nothing of the board knows of it. Start at
 * {@link benchpace.board.playback.Playbacks}.
 */
package benchpace.board.playback;
