/**
 * The page behind the code at a guest's place. Start at {@link benchpace.web.guest.GuestPages}.
 */
package benchpace.web.guest;
