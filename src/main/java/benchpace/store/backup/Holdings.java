package benchpace.store.backup;

/**
 * What a store holds, counted by its own readers.
 *
 * @param classes    with those that were deleted lately and can be had back
 * @param deleted    of those
 * @param unreadable of those that cannot be read back, as they could not be where they came from
 * @param events     of all classes that can be read
 * @param shelf      events of the pickup shelf
 * @param plans      saved plans, with deleted ones
 */
public record Holdings(long classes, long deleted, long unreadable, long events, long shelf, long plans) { }
