/**
 * What marks a screen as that of an evening played back, and moves it along. Start at {@link
 * benchpace.web.screen.playback.PlaybackBand}.
 */
package benchpace.web.screen.playback;
