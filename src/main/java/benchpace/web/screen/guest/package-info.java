/**
 * A guest's own phone, and the codes that lead to it. Start at {@link benchpace.web.screen.guest.GuestPage}.
 */
package benchpace.web.screen.guest;
