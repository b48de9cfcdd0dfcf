package benchpace.pace;

/**
 * A stretch of class time, in minutes from the class's start.
 *
 * @param fromMinutes its beginning
 * @param toMinutes its end, not before the beginning; {@link Double#POSITIVE_INFINITY} while it lasts
 */
public record Span(double fromMinutes, double toMinutes) {
    public Span {
        if (!(fromMinutes <= toMinutes)) {
            throw new IllegalArgumentException("a span from " + fromMinutes + " to " + toMinutes + " min");
        }
    }

    public boolean covers(double minutes) {
        return fromMinutes <= minutes && minutes < toMinutes;
    }

    double overlap(double from, double to) {
        return Math.max(0, Math.min(to, toMinutes) - Math.max(from, fromMinutes));
    }
}
