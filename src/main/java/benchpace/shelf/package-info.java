/**
 * Floor 1: the pickup shelf, where candles wait for guests who left before they were set. Places, tags, claim words,
 * and the rules of putting, collecting, undoing, moving and erasing, as decisions over events that are folded into a
 * {@link benchpace.shelf.Shelf}. Pure: no clock, no files; a seed comes in where words are drawn. Knows nothing of a
 * class but its id, the seat and the times. Start at {@link benchpace.shelf.ShelfRules}.
 */
package benchpace.shelf;
