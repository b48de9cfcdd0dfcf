package benchpace.words.prep;

import benchpace.prep.card.SafetyLine;

/** The first-aid and fire card. */
public final class SafetyWords {
    private SafetyWords() { }

    public static String topic(SafetyLine.Topic topic) {
        return switch (topic) {
            case BURN -> "If hot wax burns somebody";
            case FIRE -> "If wax catches fire";
            case TABLE -> "At the table";
        };
    }

    /** One line with its source. */
    public static String of(SafetyLine line) {
        return text(line) + " " + Sources.of(line.provenance(), source(line));
    }

    /** One line alone. */
    public static String text(SafetyLine line) {
        return switch (line) {
            case COOL_THE_BURN -> "Cool it under cool running water for " + SafetyLine.COOL_MINUTES
                    + " minutes; start at once and watch the clock.";
            case OFF_UNLESS_STUCK -> "Take off clothing and jewellery near it, unless it is melted on or firmly stuck.";
            case LEAVE_WAX_THAT_STICKS -> "Cool it with the wax in place; do not pull off wax that sticks.";
            case NEVER_ICE -> "Never ice, butter or toothpaste.";
            case COVER_LOOSELY -> "Then cover it loosely with cling film.";
            case GET_HELP -> "Get medical help if it is larger than the hurt person's palm, on face, hands, feet or "
                    + "joints, right round a limb, blistered or charred, or if a child is hurt.";
            case SMOTHER -> "Heat off; put the lid on, or a fire blanket. Keep a lid beside each melter.";
            case NEVER_WATER -> "Never water on hot or burning wax.";
            case CLASS_B -> "An extinguisher for class B (powder, CO2 or foam); not water alone, and wet chemical for "
                    + "cooking oil is not what is asked for here.";
            case LEAVE_AND_CALL -> "If it is not out at once: everybody out, doors shut, call the fire service.";
            case CARRY_WHEN_SOLID -> "Wait until wax is solid before a candle is handled or carried.";
            case GLOVES_FOR_METAL -> "Gloves for metal pitchers and pots: at 70 °C bare metal burns at a touch.";
            case ASK_ABOUT_ALLERGIES -> "Ask before the class about asthma and allergies; keep air moving.";
            case CHILDREN_WITH_ADULTS -> "Children only with an adult beside them; wipe up spilt wax at once.";
        };
    }

    private static String source(SafetyLine line) {
        return switch (line) {
            case COOL_THE_BURN -> "British Burn Association, by Kent Fire and Rescue; other guides say 10 to 30 "
                    + "minutes";
            case OFF_UNLESS_STUCK, NEVER_ICE, COVER_LOOSELY -> "British Burn Association";
            case LEAVE_WAX_THAT_STICKS -> "follows from the rule for clothing that is stuck";
            case GET_HELP -> "summary of the British health service's rule";
            case SMOTHER -> "National Candle Association; Idaho State Fire Marshal, 2022";
            case NEVER_WATER, CARRY_WHEN_SOLID -> "National Candle Association";
            case CLASS_B -> "EN 2; NFPA 10";
            case GLOVES_FOR_METAL -> "ISO 13732-1, burn threshold of smooth bare metal after a second";
            case LEAVE_AND_CALL, ASK_ABOUT_ALLERGIES, CHILDREN_WITH_ADULTS -> "";
        };
    }
}
