package benchpace.history;

/**
 * A dot of a drawing: one class, or the middle of several that followed one another.
 *
 * @param day     when, in days; a fraction where a class began later in the day
 * @param value   of whatever is drawn
 * @param classes how many it stands for, at least 1
 */
public record Dot(double day, double value, int classes) {
    public Dot {
        if (!Double.isFinite(day) || !Double.isFinite(value) || classes < 1) {
            throw new IllegalArgumentException("a dot cannot be at " + day + ", " + value + " for " + classes);
        }
    }
}
