package benchpace.words.prep;

import benchpace.plan.kit.Melter;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.melter.Refill;
import benchpace.words.Degrees;
import benchpace.words.PrepFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says what a melter has to do; what could not be worked out is left out here and told among the problems. */
public final class MelterWords {
    /** What the times rest on. */
    public static final String BASIS = "Times are the heat over the watts that reach the wax. Solid wax conducts "
            + "badly, so your own stop-watch decides: time one melt and correct the efficiency.";

    private MelterWords() { }

    /** Everything about one melter, in the order in which it is done. */
    public static List<String> of(MelterLine line) {
        if (line.neededGrams().isPresent() && !line.used()) {
            return List.of("Nobody pours from it in this class: leave it off.");
        }
        List<String> said = new ArrayList<>();
        line.neededGrams().ifPresent(grams -> said.add(Amounts.weight(grams) + " are needed, spills counted"
                + (line.melter().scentedIn() == Melter.ScentedIn.MELTER ? ", with the fragrance stirred in here"
                        : ", the fragrance joins in the jug") + "."));
        line.firstFillGrams().ifPresent(grams -> said.add(fill(line, grams)));
        line.heatKilojoules().ifPresent(heat -> said.add(heat(line, heat)));
        line.switchOnMinutesBefore().ifPresent(minutes -> said.add("Switch it on " + PrepFigures.minutes(minutes)
                + " before the beginning."));
        line.refills().forEach(refill -> said.add(of(refill)));
        if (line.fills().orElse(0) > 1) {
            said.add("A larger melter, a second one, or fewer seats in a round would keep the pouring going.");
        }
        return said;
    }

    private static String fill(MelterLine line, double grams) {
        String heel = line.melter().heelGrams() > 0 ? ", " + PrepFigures.grams(line.melter().heelGrams())
                + " of which stay in it" : "";
        long fills = line.fills().orElseThrow();
        return (fills > 1 ? "It takes " + fills + " fills, the first of " : "One fill "
                + "of ") + Amounts.weight(grams) + heel
                + ".";
    }

    private static String heat(MelterLine line, double kilojoules) {
        String minutes = line.meltMinutes().isPresent()
                ? ": " + PrepFigures.minutes(line.meltMinutes().getAsDouble()) + " at "
                        + Amounts.watts(line.melter().watts().orElseThrow()) + " and an efficiency of "
                        + efficiency(line.melter().efficiency().orElseThrow())
                : "";
        return "From " + Degrees.celsius(line.melting().orElseThrow().roomCelsius()) + " to "
                + Degrees.celsius(line.melting().orElseThrow().pourCelsius()) + " that takes " + Math.round(kilojoules)
                + " kJ" + minutes + ".";
    }

    /** "Fill 2, after about 34 seats: ...". */
    public static String of(Refill refill) {
        String after = "Fill " + refill.number() + ", after about " + refill.afterSeats() + " seats: "
                + Amounts.weight(refill.topUp().coldGrams()) + " of cold wax";
        String mix = refill.topUp().hotGrams() > 0 ? " onto what stays bring it down to "
                + Degrees.celsius(refill.topUp().mixCelsius()) + ", "
                + Math.round(100 * refill.topUp().liquidFraction()) + " % molten" : "";
        return after + mix + "; " + (refill.minutes().isPresent() ? "nobody can pour for about "
                + PrepFigures.minutes(refill.minutes().getAsDouble()) : "nobody can pour until all of it is molten "
                + "again")
                + ".";
    }

    /** "0.70": a share, to two places. */
    public static String efficiency(double efficiency) {
        return String.format(Locale.ROOT, "%.2f", efficiency);
    }

    /** What the shop's stop-watch says. @param efficiency above 0; above 1 one of the figures is wrong */
    public static String measured(double efficiency) {
        return efficiency > 1 ? "No melter is that quick: it would give " + efficiency(efficiency)
                + " times the heat that it takes. Check grams, watts and minutes."
                : "The stop-watch gives an efficiency of " + efficiency(efficiency) + ".";
    }
}
