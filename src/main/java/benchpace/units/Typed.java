package benchpace.units;

import java.util.List;

/**
 * A figure as somebody typed it, and what it means. What is no such figure, or could mean two, is refused in one
 * sentence.
 *
 * @param value in what the house reckons in: grams, millilitres, degrees Celsius, watts
 * @param text  what was typed, completed with the unit that was meant where none was typed, so that it means the same
 *              whatever is chosen later
 */
public record Typed(double value, String text) {
    private static final int LONGEST = 40;

    /**
     * A weight: "8 oz", "1 lb 4 oz", "226,8 g"; a bare number is in the chosen unit.
     *
     * @throws IllegalArgumentException if it is none; a fluid ounce is none
     */
    public static Typed mass(String text, UnitChoice choice) {
        return read(text, Kind.MASS, choice.mass(), choice);
    }

    /**
     * A volume: "8 US fl oz", "250 ml". Plain "fl oz" is the chosen one, if one is chosen.
     *
     * @throws IllegalArgumentException if it is none, or could be either fluid ounce
     */
    public static Typed volume(String text, UnitChoice choice) {
        return read(text, Kind.VOLUME, choice.volume(), choice);
    }

    /** A temperature: "145 °F", "62,5". @throws IllegalArgumentException if it is none */
    public static Typed temperature(String text, UnitChoice choice) {
        return read(text, Kind.TEMPERATURE, choice.temperature(), choice);
    }

    /** A power: "1000 W", "1.5 kW", "5000 BTU/h". @throws IllegalArgumentException if it is none */
    public static Typed watts(String text, UnitChoice choice) {
        return read(text, Kind.POWER, PowerUnit.WATT, choice);
    }

    private static Typed read(String typed, Kind kind, Unit bare, UnitChoice choice) {
        String line = typed.strip().replaceAll("[\\s\\u00a0\\u202f]+", " ");
        require(!line.isEmpty(), "nothing is typed", kind);
        require(line.length() <= LONGEST, "that is longer than " + LONGEST + " characters", kind);
        String shown = "\"" + line + "\"";
        List<Quantity> parts = Quantity.parts(line);
        require(!parts.isEmpty(), shown + " is not " + kind.called(), kind);
        double sum = 0;
        for (Quantity part : parts) {
            sum += meant(part, shown, kind, bare, choice).toBase(number(part, shown));
        }
        require(parts.size() == 1 || poundsAndOunces(parts), shown + " is more than one figure", kind);
        require(Double.isFinite(sum), shown + " is not " + kind.called(), kind);
        require(kind == Kind.TEMPERATURE || sum >= 0, shown + " is below zero", kind);
        Quantity only = parts.get(0);
        boolean said = !only.unit().isEmpty() && !Kind.isPlainFluidOunce(only.unit());
        return new Typed(sum, said ? line : only.digits() + " " + meant(only, shown, kind, bare, choice).symbol());
    }

    private static double number(Quantity part, String shown) {
        if (part.isAmbiguous()) {
            throw new IllegalArgumentException(shown + " can be a thousand and more or one and a part: write it "
                    + "without a comma");
        }
        return part.number();
    }

    /** The unit that was meant. */
    private static Unit meant(Quantity part, String shown, Kind kind, Unit bare, UnitChoice choice) {
        if (part.unit().isEmpty()) {
            return bare;
        }
        if (kind == Kind.VOLUME && Kind.isPlainFluidOunce(part.unit())) {
            if (choice.volume() == VolumeUnit.MILLILITRE) {
                throw new IllegalArgumentException(shown + " can be two volumes, which differ by 4 %: write "
                        + "US fl oz or imp fl oz");
            }
            return choice.volume();
        }
        return kind.unit(part.unit()).orElseThrow(() -> refused(shown + Kind.of(part.unit())
                .map(other -> " is " + other.called() + ", not ").orElse(" is not ") + kind.called(), kind));
    }

    private static boolean poundsAndOunces(List<Quantity> parts) {
        return parts.size() == 2
                && Kind.MASS.unit(parts.get(0).unit()).filter(MassUnit.POUND::equals).isPresent()
                && Kind.MASS.unit(parts.get(1).unit()).filter(MassUnit.OUNCE::equals).isPresent();
    }

    private static void require(boolean holds, String otherwise, Kind kind) {
        if (!holds) {
            throw refused(otherwise, kind);
        }
    }

    private static IllegalArgumentException refused(String what, Kind kind) {
        return new IllegalArgumentException(what + ": give a number and " + kind.units());
    }
}
