package benchpace.board.view;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** A view of a class as it is handed to many screens, and what they have drawn of it. Safe for use by many threads. */
public final class MadeView {
    private final Order order;
    private final long computed;
    private final ClassView view;
    private final Map<Object, Object> drawn = new ConcurrentHashMap<>();

    /**
     * Where a view stands among all views of its class: by when they were begun and not by time, as a clock may be set
     * back in between. What is shown at once of a moment stands before the whole view of it, even if that was begun
     * sooner.
     *
     * @param whole  the number of the whole view, or of the last one of an older moment
     * @param atOnce which of those that were shown at once since; 0 for a whole one
     */
    public record Order(long whole, long atOnce) implements Comparable<Order> {
        public static final Order BEFORE_ALL = new Order(0, 0);

        @Override public int compareTo(Order other) {
            return whole != other.whole ? Long.compare(whole, other.whole) : Long.compare(atOnce, other.atOnce);
        }
    }

    /** @param computed the number of the whole view for which was computed what is computed in this one */
    MadeView(Order order, long computed, ClassView view) {
        if (computed > order.whole() || order.atOnce() == 0 && computed < order.whole()) {
            throw new IllegalArgumentException("a view that is " + order + " rests on " + computed);
        }
        this.order = order;
        this.computed = computed;
        this.view = view;
    }

    /** @param number of all whole views of the class */
    public static MadeView whole(long number, ClassView view) {
        return new MadeView(new Order(number, 0), number, view);
    }

    public Order order() {
        return order;
    }

    /** A higher one has been computed later. */
    public long computed() {
        return computed;
    }

    public ClassView view() {
        return view;
    }

    /** Whether all of it is of one moment; else what the last taps changed stands beside what was computed before. */
    public boolean whole() {
        return order.atOnce() == 0;
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
