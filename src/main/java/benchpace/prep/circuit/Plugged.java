package benchpace.prep.circuit;

/**
 * One appliance on one circuit. The plate's watts count, never an average: a thermostat's cycles save energy, not
 * current.
 *
 * @param amps      watts over volts
 * @param onMinutes warming up counted
 * @param melter    whether it is a melter
 */
public record Plugged(String id, String name, double watts, double amps, double onMinutes, boolean melter) {
    /** On so long or longer, a load is continuous (NEC article 100: 3 hours or more). */
    public static final double CONTINUOUS_MINUTES = 180;

    public boolean continuous() {
        return onMinutes >= CONTINUOUS_MINUTES;
    }

    /** The same appliance, or a smaller one of its kind, at these watts. */
    Plugged at(double otherWatts) {
        return new Plugged(id, name, otherWatts, amps * otherWatts / watts, onMinutes, melter);
    }
}
