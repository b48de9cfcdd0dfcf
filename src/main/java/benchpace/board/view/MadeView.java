package benchpace.board.view;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** A view of a class as it is handed to many screens, and what they have drawn of it. Safe for use by many threads. */
public final class MadeView {
    private final long number;
    private final long computed;
    private final ClassView view;
    private final Map<Object, Object> drawn = new ConcurrentHashMap<>();

    /**
     * @param number   of all views of the class, counted as they were begun: their order, also where a clock was set
     *                 back in between
     * @param computed the number of the view that what is computed in this one was computed for
     */
    public MadeView(long number, long computed, ClassView view) {
        if (computed > number) {
            throw new IllegalArgumentException("view " + number + " rests on a later one, " + computed);
        }
        this.number = number;
        this.computed = computed;
        this.view = view;
    }

    public long number() {
        return number;
    }

    public long computed() {
        return computed;
    }

    public ClassView view() {
        return view;
    }

    /** Whether all of it is of one moment; else what the last taps changed stands beside what was computed before. */
    public boolean whole() {
        return computed == number;
    }

    /**
     * Draws something of it once, for all screens that show the same.
     *
     * @param what what is drawn, and all that it hangs on beside the view
     */
    @SuppressWarnings("unchecked") // whoever names the same asks for the same
    public <T> T once(Object what, Supplier<T> drawing) {
        return (T) drawn.computeIfAbsent(what, key -> drawing.get());
    }
}
