package benchpace.cure.solver;

import java.util.OptionalDouble;

/**
 * When a candle passes each milestone, minutes from the pour; empty when not within 24 hours.
 *
 * @param skinMinutes the warmest point of the top surface is at or below the middle of the melting range
 * @param halfMinutes half of the wax is solid
 * @param firmMinutes 95 per cent of it is solid
 * @param setMinutes every point is at or below the solidus
 * @param handCoolMinutes wall and base are at or below 40 C for good; 0 when the pour never warmed them above it.
 *     Never to be taken for a sign of being set
 * @param energyErrorFraction difference between heat lost and heat given up, over the latter
 */
public record CureMilestones(OptionalDouble skinMinutes, OptionalDouble halfMinutes, OptionalDouble firmMinutes,
        OptionalDouble setMinutes, OptionalDouble handCoolMinutes, double energyErrorFraction) {

    /** The longest time looked at, minutes. */
    public static final double HORIZON_MINUTES = 24 * 60;

    /** Wall temperature that counts as cool to the hand, Celsius; common practice, no source. */
    static final double HAND_COOL_CELSIUS = 40;
}
