package benchpace.board.prep;

import benchpace.prep.evening.Effect;
import benchpace.prep.evening.Timetable;
import java.util.List;
import java.util.Optional;

/** How far the simulation of an occasion's evenings has come. */
public sealed interface Odds {
    /** Under way, or waiting its turn. @param done evenings of {@code of}, which is above 0 */
    record UnderWay(int done, int of) implements Odds { }

    /** @param helps what would help, those that help most first; empty while that is still being tried */
    record Told(Timetable timetable, Optional<List<Effect>> helps) implements Odds { }

    /** It cannot be simulated; the log says why. */
    record Missing() implements Odds { }
}
