/**
 * The pickup shelf, its tags and leaving early. Start at {@link benchpace.web.screen.shelf.ShelfPage}.
 */
package benchpace.web.screen.shelf;
