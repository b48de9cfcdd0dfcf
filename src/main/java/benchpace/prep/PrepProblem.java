package benchpace.prep;

/**
 * Why a part of the sheet could not be worked out, or must not be followed as it stands. Facts only; {@code
 * benchpace.words.PrepWords} says them. {@code id} and {@code name} are those of what it is about, empty where that is
 * the whole class.
 */
public sealed interface PrepProblem {
    /** The part of the sheet that it concerns. */
    Part part();

    /** The id of the candle, melter, appliance or circuit that it is about; empty if it is about the class. */
    String id();

    /** A figure is wanting, and what hangs on it is not worked out. */
    record Wanting(Figure figure, String id, String name) implements PrepProblem {
        @Override public Part part() {
            return figure.part();
        }
    }

    /** The plan names no candle, so that nobody knows what is poured. */
    record NoCandle() implements PrepProblem {
        @Override public Part part() {
            return Part.WAX;
        }

        @Override public String id() {
            return "";
        }
    }

    /**
     * More fragrance than is allowed.
     *
     * @param fraction        of all that is poured
     * @param allowedFraction of all that is poured, the smaller of the limits that are known
     */
    record LoadOver(String id, String name, double fraction, double allowedFraction) implements PrepProblem {
        @Override public Part part() {
            return Part.LOAD;
        }
    }

    /** A melter is for a wax that no candle of the plan is made of. */
    record NoCandleOfWax(String id, String name, String wax) implements PrepProblem {
        @Override public Part part() {
            return Part.MELTER;
        }
    }

    /** Two candles of one wax give it different numbers. */
    record WaxSaidTwoWays(String id, String name, String wax) implements PrepProblem {
        @Override public Part part() {
            return Part.MELTER;
        }
    }

    /** It is to be poured at a temperature at which it is not all molten. */
    record NotMolten(String id, String name, double pourCelsius, double liquidusCelsius) implements PrepProblem {
        @Override public Part part() {
            return Part.MELTER;
        }
    }

    /** In so warm a room the wax is not solid to begin with. */
    record NotSolid(String id, String name, double roomCelsius, double solidusCelsius) implements PrepProblem {
        @Override public Part part() {
            return Part.MELTER;
        }
    }

    /** More is plugged in than the rule allows. */
    record CircuitOver(String id, String name) implements PrepProblem {
        @Override public Part part() {
            return Part.CIRCUIT;
        }
    }

    /** Evenings could not be simulated. */
    record NoTimetable() implements PrepProblem {
        @Override public Part part() {
            return Part.TIMETABLE;
        }

        @Override public String id() {
            return "";
        }
    }
}
