package benchpace.board.attempt;

import java.util.HashSet;
import java.util.Set;

/** Tells faults that were seen before from new ones, so that a log is not flooded. Safe for use by many threads. */
public final class Faults {
    /** Enough to tell all there are; beyond it nothing is new any more. */
    private static final int MOST = 200;

    private final Set<String> seen = new HashSet<>();

    /** Whether this is the first of its kind here: the same sort of fault, from the same line, in the same part. */
    public synchronized boolean isNew(String part, Throwable fault) {
        Throwable first = fault;
        while (first.getCause() != null && first.getCause() != first) {
            first = first.getCause();
        }
        StackTraceElement[] trace = first.getStackTrace();
        return seen.size() < MOST
                && seen.add(part + " " + first.getClass().getName() + (trace.length == 0 ? "" : " " + trace[0]));
    }
}
