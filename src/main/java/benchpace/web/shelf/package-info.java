/**
 * Leaving early and the pickup shelf over HTTP. Start at {@link benchpace.web.shelf.ShelfApi}.
 */
package benchpace.web.shelf;
