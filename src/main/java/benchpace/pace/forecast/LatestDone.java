package benchpace.pace.forecast;

/** When all but a few are done: of the moments it is given it keeps the latest. */
public final class LatestDone {
    private final double[] kept;
    private int size;
    private int most;

    /** @param seats how many moments there may be */
    public LatestDone(int seats) {
        kept = new double[seats];
    }

    /**
     * Begins anew.
     *
     * @param missing how many need not be done, at least 0 and fewer than there are
     */
    public void clear(int missing) {
        size = 0;
        most = missing + 1;
    }

    /** Somebody is done at {@code minutes}. */
    public void add(double minutes) {
        boolean full = size == most;
        if (full && minutes <= kept[0]) {
            return;
        }
        int at = full ? 0 : size;
        if (full) {
            while (at + 1 < most && kept[at + 1] < minutes) {
                kept[at] = kept[at + 1];
                at++;
            }
        } else {
            while (at > 0 && kept[at - 1] > minutes) {
                kept[at] = kept[at - 1];
                at--;
            }
            size++;
        }
        kept[at] = minutes;
    }

    /** The moment at which all but the missing are done; some moment must have been added. */
    public double allButMissing() {
        return kept[0];
    }
}
