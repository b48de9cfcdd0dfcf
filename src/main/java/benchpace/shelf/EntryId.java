package benchpace.shelf;

/** Names one candle on the shelf, for good; 1 and up in the order they were put there. */
public record EntryId(long value) implements Comparable<EntryId> {
    public EntryId {
        if (value < 1) {
            throw new IllegalArgumentException("an entry's number is 1 or more, not " + value);
        }
    }

    @Override public int compareTo(EntryId o) {
        return Long.compare(value, o.value);
    }

    @Override public String toString() {
        return Long.toString(value);
    }
}
