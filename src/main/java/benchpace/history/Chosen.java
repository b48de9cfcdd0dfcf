package benchpace.history;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * Which past classes somebody wants to see; what is absent leaves none out.
 *
 * @param planId      those of one plan, whatever its version
 * @param place       those in one room; the empty name is "this room"
 * @param from        the first day
 * @param until       the last day, itself among them
 * @param punctuality a class without figures is neither late nor on time
 */
public record Chosen(Optional<String> planId, Optional<String> place, Optional<LocalDate> from,
                     Optional<LocalDate> until, Optional<Punctuality> punctuality) {
    public static final Chosen ALL = new Chosen(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty());

    public boolean accepts(PastClass past, ZoneId zone) {
        LocalDate day = past.day(zone);
        return planId.map(past.planId()::equals).orElse(true)
                && place.map(past.place()::equals).orElse(true)
                && from.map(first -> !day.isBefore(first)).orElse(true)
                && until.map(last -> !day.isAfter(last)).orElse(true)
                && punctuality.map(p -> past.figures().filter(f -> f.punctuality() == p).isPresent()).orElse(true);
    }

    /** Whether the span ends before it begins, so that no class can lie in it. */
    public boolean backwards() {
        return from.isPresent() && until.isPresent() && until.get().isBefore(from.get());
    }

    public boolean everything() {
        return equals(ALL);
    }
}
