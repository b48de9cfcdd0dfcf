/**
 * Which device is who: PINs, keys, sessions and their rights, and the brake on guesses. Start at {@link
 * benchpace.web.pairing.Access}.
 */
package benchpace.web.pairing;
