package benchpace.plan;

import benchpace.plan.kit.LoadConvention;
import java.util.Optional;

/**
 * What a seat makes: one choice of vessel, wax and fill, with the temperatures it is planned for.
 *
 * @param id                short name used in plans and events; lower-case letters, digits and hyphens
 * @param fillGrams         wax and fragrance together, grams; above 0
 * @param fragranceFraction fragrance as a share of all that is poured, 0 to 0.25
 * @param roomCelsius       the room it is planned for, -10 to 45
 * @param pourCelsius       at the pour, in the pitcher, 30 to 150
 * @param brim              if the fill was told by the vessel; {@code fillGrams} is then what it comes to
 * @param convention        what the maker counts the percentage of fragrance on
 * @param asTyped           of {@code fillGrams}, {@code brimMillilitres}, {@code roomCelsius}, {@code pourCelsius}
 */
public record Candle(String id, String name, Vessel vessel, Wax wax, double fillGrams, double fragranceFraction,
                     double roomCelsius, double pourCelsius, TableTop tableTop, Optional<BrimFill> brim,
                     LoadConvention convention, AsTyped asTyped) {
    /** Rooms that a class is held in, degrees Celsius. */
    public static final double COLDEST_ROOM = -10;
    public static final double HOTTEST_ROOM = 45;
    /** The smallest candle that is told of, grams. */
    public static final double LEAST_FILL = 1;
    /** What candle wax is poured at, degrees Celsius. */
    public static final double COLDEST_POUR = 30;
    public static final double HOTTEST_POUR = 150;

    public Candle {
        Ids.checked("the id of a candle", id);
        Texts.required("the name of a candle", name, 60);
        within("fill of \"" + name + "\" in grams", fillGrams, LEAST_FILL, 100_000);
        within("fragrance share of \"" + name + "\"", fragranceFraction, 0, 0.25);
        within("room temperature of \"" + name + "\"", roomCelsius, COLDEST_ROOM, HOTTEST_ROOM);
        within("pour temperature of \"" + name + "\"", pourCelsius, COLDEST_POUR, HOTTEST_POUR);
        Texts.present("what the fragrance of \"" + name + "\" is counted on", convention);
        Texts.present("what was typed of \"" + name + "\"", asTyped);
        if (brim.isPresent() && brim.get().grams(wax) != fillGrams) {
            throw new IllegalArgumentException("the fill of \"" + name + "\" is told by its brim and must be "
                    + brim.get().grams(wax) + " grams, not " + fillGrams);
        }
    }

    /** Filled by mass, its fragrance counted on the wax, with nothing kept as it was typed. */
    public Candle(String id, String name, Vessel vessel, Wax wax, double fillGrams, double fragranceFraction,
                  double roomCelsius, double pourCelsius, TableTop tableTop) {
        this(id, name, vessel, wax, fillGrams, fragranceFraction, roomCelsius, pourCelsius, tableTop,
                Optional.empty(), LoadConvention.OF_WAX, AsTyped.NONE);
    }

    /** How high the wax stands in its vessel, millimetres; at most to the brim. */
    public double fillHeightMillimetres() {
        double radius = vessel.innerDiameterMillimetres() / 2;
        return Math.min(vessel.brimHeightMillimetres(),
                fillGrams * 1e6 / (wax.densityKgM3() * Math.PI * radius * radius));
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException("the " + what + " must be " + least + " to " + most + ", not " + value);
        }
    }
}
