/**
 * Evenings played back, over the network: opened, moved along, ended, and marked on each screen. Start at
 * {@link benchpace.web.playback.PlaybacksApi}.
 */
package benchpace.web.playback;
