/**
 * The prep sheet: what is melted, plugged in, laid out, packed and bought for a class. Start at {@link
 * benchpace.web.screen.prep.PrepPage}.
 */
package benchpace.web.screen.prep;
