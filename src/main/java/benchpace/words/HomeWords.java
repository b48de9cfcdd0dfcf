package benchpace.words;

import benchpace.board.pacing.HomeTime;

/** Says what the time at which everyone goes home hangs on, and what it rests on. */
public final class HomeWords {
    private HomeWords() { }

    /** "seat 4, then the cure", "the cure of seat 4"; empty if it hangs on no single seat. */
    public static String driver(HomeTime home) {
        return home.driver().map(d -> d.poured() ? "the cure of seat " + d.seat()
                : "seat " + d.seat() + ", then the cure").orElse("");
    }

    /** "by tonight's pace and the cure in this room"; empty if nothing is foretold. */
    public static String basis(HomeTime home) {
        return switch (home.basis()) {
            case NONE -> "";
            case PLAN -> "by the plan's figures";
            case PACE_AND_PLANNED_CURE -> "by tonight's pace and the plan's cure";
            case PACE_AND_COMPUTED_CURE -> "by tonight's pace and the cure in this room";
            case PLANNED_CURE -> "by the plan's cure";
            case COMPUTED_CURE -> "by the cure in this room";
            case HAND -> "by hand";
            case HAND_TEST -> "by hand test";
        };
    }
}
