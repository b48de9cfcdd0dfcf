package benchpace.prep.melter;

import benchpace.plan.kit.Melter;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What a melter has to do. A figure is absent if it cannot be worked out; the sheet's problems say why.
 *
 * @param seats                  that pour from it
 * @param melting                from the room to the highest pour temperature of the plan's candles of its wax
 * @param neededGrams            with spills; with the fragrance if that is stirred in here
 * @param firstFillGrams         what stays in it counted
 * @param heatKilojoules         for the first fill
 * @param meltMinutes            until the first fill is ready to pour
 * @param switchOnMinutesBefore  the class begins; the margin counted
 * @param refills                the fills after the first, at most {@value #MOST_REFILLS} of them
 */
public record MelterLine(Melter melter, int seats, Optional<Melting> melting, OptionalDouble neededGrams,
                         OptionalLong fills, OptionalDouble firstFillGrams, OptionalDouble heatKilojoules,
                         OptionalDouble meltMinutes, OptionalDouble switchOnMinutesBefore, List<Refill> refills) {
    /** More fills than these are no class any more, and are only counted. */
    public static final int MOST_REFILLS = 12;
    /** A switch-on time is told to these minutes, never later than was worked out. */
    private static final int TOLD_TO_MINUTES = 5;

    public MelterLine {
        refills = List.copyOf(refills);
    }

    /** Whether anybody pours from it in this class. */
    public boolean used() {
        return neededGrams.orElse(0) > 0;
    }

    /** When to switch it on, to five minutes and never too late; absent if it is not known or not used. */
    public Optional<Instant> switchOnAt(Instant start) {
        if (!used() || switchOnMinutesBefore.isEmpty()) {
            return Optional.empty();
        }
        long step = TOLD_TO_MINUTES * 60L;
        Instant exact = start.minus(Duration.ofSeconds((long) Math.ceil(switchOnMinutesBefore.getAsDouble() * 60)));
        return Optional.of(Instant.ofEpochSecond(Math.floorDiv(exact.getEpochSecond(), step) * step));
    }
}
