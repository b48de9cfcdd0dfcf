package benchpace.board.prep;

import benchpace.prep.evening.Timetable;

/** How far the simulation of an occasion's evenings has come. */
public sealed interface Odds {
    /** Under way, or waiting its turn. @param done evenings of {@code of}, which is above 0 */
    record UnderWay(int done, int of) implements Odds { }

    record Told(Timetable timetable) implements Odds { }

    /** It cannot be simulated; the log says why. */
    record Missing() implements Odds { }
}
