package benchpace.words;

import benchpace.board.cooling.Observation;
import benchpace.board.cooling.Refit;

/** Says by how much the last thing that was seen moved the forecast. */
public final class FitWords {
    private FitWords() { }

    /** "Room refitted from the reading at seat 3: candles about 4 min sooner."; empty if there is nothing to say. */
    public static String of(Refit refit) {
        String seen = seen(refit.seen());
        boolean teaches = refit.seen().seat().isPresent();
        if (refit.laterMinutes().isEmpty()) {
            return teaches ? "The room has learned from " + seen + "." : "";
        }
        double later = refit.laterMinutes().getAsDouble();
        long minutes = Math.round(Math.abs(later));
        if (minutes < 1) {
            return teaches ? "Room refitted from " + seen + ": it fits what was expected, within a minute." : "";
        }
        return (teaches ? "Room refitted from " : "Recomputed from ") + seen + ": candles about "
                + Phrases.count((int) minutes) + (later < 0 ? " sooner." : " later.");
    }

    /** "the reading at seat 3". */
    private static String seen(Observation seen) {
        String where = seen.seat().map(s -> " at seat " + s).orElse("");
        return switch (seen.kind()) {
            case ROOM -> "the room's thermometer";
            case POUR -> "the pour temperature";
            case SURFACE -> "the reading" + where;
            case SKIN -> "the skin seen" + where;
            case JUDGED_SET -> "the hand test" + where;
        };
    }
}
