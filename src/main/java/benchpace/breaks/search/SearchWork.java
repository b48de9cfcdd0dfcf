package benchpace.breaks.search;

/** Counts the work of a search, in transitions weighed or as costly: the core has no clock to limit it by. */
final class SearchWork {
    private long done;

    long done() {
        return done;
    }

    void add(long more) {
        done += more;
    }
}
