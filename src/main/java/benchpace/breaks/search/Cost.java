package benchpace.breaks.search;

/**
 * The cost of one seat's strip as one number, in strict order of weight: announced parts that do not stay, label and
 * clean-up missed, minutes with nothing to do, parts that were not in the previous plan. Each step of the scale is
 * larger than everything below it can sum up to in a class of 60.
 */
final class Cost {
    static final long NEW_PART = 1;
    static final long IDLE_MINUTE = 10_000;
    static final long MISSED = 1_000_000_000L;
    static final long BROKEN_ANNOUNCEMENT = 1_000_000_000_000L;

    private Cost() { }

    static int idleMinutes(long cost) {
        return (int) (cost % MISSED / IDLE_MINUTE);
    }
}
