package benchpace.words;

import benchpace.board.cooling.CutAway;
import benchpace.cure.solver.CandleSection;
import benchpace.plan.Vessel;
import java.util.Locale;

/** Says whose candle is shown cut open, since when it cools and how far it is; beside the drawing and in its place. */
public final class CutWords {
    private static final double STILL_LIQUID = 0.03;
    private static final double NEARLY_ALL = 0.97;

    private CutWords() { }

    /** "Seat 1: Soy in a glass, 18 min after the pour". */
    public static String caption(CutAway cut) {
        long minutes = minutes(cut.section());
        return "Seat " + cut.seat() + ": " + cut.candle() + ", "
                + (minutes < 1 ? "just poured" : minutes + " min after the pour");
    }

    /** "still liquid", "about 45 % set", "nearly all set": to five per cent, as it is computed and not measured. */
    public static String solid(CandleSection section) {
        double solid = section.solidFraction();
        return solid < STILL_LIQUID ? "still liquid"
                : solid > NEARLY_ALL ? "nearly all set" : "about " + percent(solid) + " % set";
    }

    /** The drawing in words, for who cannot see it. */
    public static String described(CutAway cut) {
        return cut.candle() + " in section, in " + material(cut.vessel()) + " on "
                + cut.tableTop().name().toLowerCase(Locale.ROOT) + ". " + described(cut.section())
                + " Computed, not measured.";
    }

    static String described(CandleSection section) {
        long minutes = minutes(section);
        String when = (minutes < 1 ? "Just poured" : minutes + " minutes after the pour") + ": ";
        double solid = section.solidFraction();
        if (solid < STILL_LIQUID) {
            return when + "all of the wax is still liquid and hot.";
        }
        if (solid > NEARLY_ALL) {
            return when + "nearly all of the wax is set; the last of it is setting.";
        }
        boolean core = section.fronts().get(1).outlines().isEmpty();
        return when + "about " + percent(solid) + " % of the wax is set. At the wall the set shell is "
                + millimetres(section.wallShellMillimetres()) + " thick, at the base "
                + millimetres(section.baseShellMillimetres()) + ", under the top "
                + millimetres(section.topShellMillimetres())
                + (core ? "; the middle is setting but still soft." : "; the middle is still liquid.");
    }

    private static long minutes(CandleSection section) {
        return (long) Math.floor(section.minutes());
    }

    private static long percent(double share) {
        return Math.round(20 * share) * 5;
    }

    private static String millimetres(double value) {
        return value < 0.5 ? "less than 1 mm" : String.format(Locale.ROOT, "about %.0f mm", value);
    }

    private static String material(Vessel vessel) {
        return switch (vessel.material()) {
            case GLASS -> "glass";
            case TIN -> "tin";
            case CERAMIC -> "ceramic";
        };
    }
}
