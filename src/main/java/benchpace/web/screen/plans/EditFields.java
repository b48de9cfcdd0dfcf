package benchpace.web.screen.plans;

import static benchpace.web.screen.plans.EditField.choice;
import static benchpace.web.screen.plans.EditField.flag;
import static benchpace.web.screen.plans.EditField.line;
import static benchpace.web.screen.plans.EditField.measure;
import static benchpace.web.screen.plans.EditField.number;
import static benchpace.web.screen.plans.EditField.several;
import static benchpace.web.screen.plans.EditField.text;

import benchpace.web.screen.plans.EditField.Choice;
import benchpace.web.screen.plans.EditField.Sort;
import java.util.ArrayList;
import java.util.List;

/**
 * Every field that a plan has on the page that edits it, in the order of the page. The form is drawn from these, and
 * read by them again, so that whatever is asked for is also kept.
 */
public final class EditFields {
    /** Chosen for a wax whose numbers are typed in. */
    public static final String OWN_WAX = "_own";
    /** Beside its choice stands what is chosen, drawn. */
    public static final String PICTURE = "picture";
    private static final String SERVED = "kind=hands-on|pour|finish";
    private static final String MEASURED_WAX = "_wax=" + OWN_WAX;

    public static final List<EditField> PLAN = List.of(
            line("name", "Name", 80),
            text("about", "What it is about", 400).hint("One sentence for you and your helpers."),
            line("place", "Place", 80).hint("The room teaches the board how fast wax sets in it."),
            number("seats", "Seats", "").fresh("8").hint("How many places it is written for."),
            choice("table", "Table", List.of(new Choice("long-table", "one long table"),
                    new Choice("two-tables", "two tables"), new Choice("horseshoe", "a horseshoe"),
                    new Choice("rows", "rows"), new Choice("rounds", "round tables"))));

    public static final List<EditField> EVENING = List.of(
            number("promisedMinutes", "Promised length", "min")
                    .hint("From the beginning to the end that guests were told. Empty: the sum of the steps."),
            number("readyMarginMinutes", "Wax molten before the class", "min")
                    .hint("How long before the beginning it is to be ready."),
            number("spillPercent", "More wax, for spills", "%")
                    .hint("To melt and weigh beyond what is poured."),
            measure("roomCelsius", Sort.DEGREES, "Room and solid wax in it")
                    .hint("Empty: each candle's own."));

    public static final List<EditField> LOADS = List.of(
            number("waxMakerPercent", "Most fragrance by the wax maker's data sheet", "%"),
            choice("convention", "The maker counts it", List.of(new Choice("", "not said yet"),
                    new Choice("of-wax", "on the wax alone"), new Choice("of-total", "on all that is poured"))),
            number("certificatePercentOfTotal", "Most by the fragrance's certificate, of all that is poured", "%"),
            measure("flashPointCelsius", Sort.DEGREES, "Flash point of the fragrance")
                    .hint("From its safety data sheet."));

    static final List<EditField> STEP = List.of(
            line("name", "Name", 60),
            choice("kind", "Kind", List.of(new Choice("hands-on", "hands-on: each seat does it"),
                    new Choice("talk", "talk: you speak"), new Choice("pour", "pour: its candle begins to set"),
                    new Choice("cure", "cure: the wait"), new Choice("finish", "finish: after the cure"))),
            choice("opening", "Begins", List.of(new Choice("led", "led: when you open it, for all"),
                    new Choice("free", "free: as soon as a seat is there"))),
            number("minutes", "Length", "min").fresh("5"),
            number("allowanceMinutes", "Allowance", "min").fresh("3")
                    .hint("How far over its length it may go before the board speaks up."),
            choice(PICTURE, "Picture", PictureChoice.choices()),
            text("say", "What to say", 400).hint("One or two sentences to say aloud."),
            text("wall", "What the wall shows", 200),
            text("caution", "Caution", 400).hint("What could hurt in this step."),
            flag("_stations", "Seats wait for a turn").when(SERVED).alsoOf("stations")
                    .hint("Where one melter tap, or two scales, cannot serve all seats at once."),
            line("stations/what", "What serves them", 60).when(SERVED + "&_stations=true")
                    .hint("Such as \"melter tap\" or \"scales\"."),
            number("stations/atOnce", "Seats at once", "").fresh("1").when(SERVED + "&_stations=true"),
            number("stations/minutesEach", "A seat keeps it for", "min").fresh("1")
                    .when(SERVED + "&_stations=true"));

    static final List<EditField> CANDLE = List.of(
            line("name", "Name", 60),
            line("vessel/name", "Vessel", 60).fresh("Glass").alsoOf("vessel", "vessel/id"),
            choice("vessel/material", "Vessel is made of", List.of(new Choice("glass", "glass"),
                    new Choice("tin", "tin"), new Choice("ceramic", "ceramic"))),
            number("vessel/innerDiameterMm", "Inner diameter", "mm"),
            number("vessel/wallMm", "Wall and base", "mm"),
            number("vessel/brimHeightMm", "Inner height to the brim", "mm"),
            choice("_wax", "Wax", List.of()).alsoOf("wax", "wax/id"),
            line("wax/name", "Name of the wax", 60).when(MEASURED_WAX),
            number("wax/densityKgM3", "Density", "kg/m³").when(MEASURED_WAX),
            measure("wax/solidusCelsius", Sort.DEGREES, "All solid at").when(MEASURED_WAX)
                    .hint("On cooling: below the melting point on the bag."),
            measure("wax/liquidusCelsius", Sort.DEGREES, "All liquid at").when(MEASURED_WAX),
            number("wax/latentHeatJKg", "Latent heat", "J/kg").when(MEASURED_WAX),
            number("wax/specificHeatSolidJKgK", "Specific heat, solid", "J/(kg K)").when(MEASURED_WAX),
            number("wax/specificHeatLiquidJKgK", "Specific heat, liquid", "J/(kg K)").when(MEASURED_WAX),
            number("wax/conductivitySolidWMK", "Conductivity, solid", "W/(m K)").when(MEASURED_WAX),
            number("wax/conductivityLiquidWMK", "Conductivity, liquid", "W/(m K)").when(MEASURED_WAX),
            choice("_fill", "Filled", List.of(new Choice("mass", "by weight"), new Choice("brim", "by volume"))),
            measure("fillGrams", Sort.MASS, "Fill, wax and fragrance").when("_fill=mass"),
            measure("brimMillilitres", Sort.VOLUME, "Volume to the brim").when("_fill=brim"),
            number("_fillPercent", "Filled so far", "% of it").fresh("85").when("_fill=brim")
                    .alsoOf("fillFraction", "fillGrams"),
            number("_percent", "Fragrance", "%").fresh("6")
                    .alsoOf("fragrancePercentOfWax", "fragrancePercentOfTotal", "fragranceFraction"),
            choice("_convention", "Counted", List.of(new Choice("of-wax", "on the wax alone"),
                    new Choice("of-total", "on all that is poured"))),
            measure("roomCelsius", Sort.DEGREES, "Room"),
            measure("pourCelsius", Sort.DEGREES, "Pour"),
            choice("tableTop", "Stands on", List.of(new Choice("wood", "wood"), new Choice("stone", "stone"),
                    new Choice("cork", "cork"))));

    static final List<EditField> ACTIVITY = List.of(
            line("name", "Name", 60),
            choice("kind", "Kind", List.of(new Choice("labels", "labels"), new Choice("short-craft", "short craft"),
                    new Choice("long-craft", "long craft"), new Choice("refreshments", "refreshments"),
                    new Choice("browsing", "browsing"), new Choice("clean-up", "clean-up"),
                    new Choice("wrapping", "wrapping"))),
            choice("audience", "Done", List.of(new Choice("own-pace", "by each seat at its own pace"),
                    new Choice("whole-class", "by the whole class together"))),
            number("typicalMinutes", "Usually", "min").fresh("5"),
            number("longestMinutes", "At most", "min").fresh("10").hint("What nine seats in ten need."),
            number("places", "Seats at once", "").fresh("8"),
            several("needs", "It needs", List.of(new Choice("hands-free", "free hands"),
                    new Choice("table-clear", "a clear table"))),
            flag("interruptible", "A guest may be called away in the middle").fresh("true"),
            line("where", "Where", 80), line("ledBy", "Led by", 80),
            text("cue", "What to say", 300), text("caution", "Caution", 300));

    static final List<EditField> SUPPLY = List.of(
            line("name", "Name", 60),
            number("perSeat", "At each place", "").fresh("1"),
            number("perClass", "Once for all", "").fresh("0"),
            flag("reusable", "It comes home again"),
            number("sparePercent", "Spare", "%").fresh("0").when("reusable=false"),
            number("packSize", "A pack holds", "").fresh("1"),
            number("inStock", "In stock", "").fresh("0"),
            number("pricePerPack", "Price of a pack", ""),
            line("box", "Box it travels in", 40));

    static final List<EditField> MELTER = List.of(
            line("name", "Name", 60),
            choice("wax", "Melts", List.of()),
            measure("capacityGrams", Sort.MASS, "Holds, when full"),
            measure("heelGrams", Sort.MASS, "Stays in it").fresh("0").hint("Below the tap or the ladle's reach."),
            number("watts", "Heater", "W"),
            number("efficiency", "Share of the heat that reaches the wax", "").hint(
                    "From 0.01 to 1. The prep sheet works it out once you have timed a melt."),
            choice("scentedIn", "Fragrance joins the wax", List.of(new Choice("jug", "in the jug"),
                    new Choice("melter", "in the melter"))));

    static final List<EditField> CIRCUIT = List.of(
            line("name", "Name", 60),
            number("volts", "Voltage", "V"),
            number("amps", "Breaker or fuse", "A"),
            choice("rule", "Judged by", List.of(new Choice("", "not said yet"),
                    new Choice("north-america", "North America: 80 % for what stays on"),
                    new Choice("uk-13", "United Kingdom: 13 A a socket"),
                    new Choice("schuko-16", "Continental Europe: 16 A, 10 A for long"),
                    new Choice("plain", "the breaker's amperes alone"))));

    static final List<EditField> APPLIANCE = List.of(
            line("name", "Name", 60),
            choice("melter", "It is", List.of()).fresh(""),
            number("watts", "Takes", "W").when("melter="),
            choice("circuit", "Plugged into", List.of()).fresh(""),
            number("onMinutes", "Stays on", "min").fresh("60").hint("Warming up counted."));

    private EditFields() { }

    /** The same with the waxes that there are, in the place of an empty list of choices. */
    static List<EditField> withWaxes(List<EditField> fields, List<Choice> waxes) {
        return fields.stream().map(f -> f.at().equals("_wax") ? f.among(plusOwn(waxes)).fresh(first(waxes))
                : f.at().equals("wax") ? f.among(waxes).fresh(first(waxes)) : f).toList();
    }

    private static String first(List<Choice> waxes) {
        return waxes.isEmpty() ? "" : waxes.get(0).id();
    }

    private static List<Choice> plusOwn(List<Choice> waxes) {
        List<Choice> all = new ArrayList<>(waxes);
        all.add(new Choice(OWN_WAX, "another: I type its data sheet"));
        return all;
    }
}
