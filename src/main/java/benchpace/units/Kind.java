package benchpace.units;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The kinds of figure that people type, each with the words for its units. A word belongs to one kind only. */
enum Kind {
    MASS("a weight", "grams, kg, oz or lb", words(
            MassUnit.GRAM, "g gr gram grams gramme grammes",
            MassUnit.KILOGRAM, "kg kilo kilos kilogram kilograms",
            MassUnit.OUNCE, "oz ounce ounces ozwt",
            MassUnit.POUND, "lb lbs pound pounds")),
    VOLUME("a volume", "ml, US fl oz or imp fl oz", words(
            VolumeUnit.MILLILITRE, "ml millilitre millilitres milliliter milliliters",
            VolumeUnit.CENTILITRE, "cl centilitre centilitres centiliter centiliters",
            VolumeUnit.LITRE, "l litre litres liter liters",
            VolumeUnit.US_FLUID_OUNCE, "usfloz flozus floz(us) usfluidounce usfluidounces",
            VolumeUnit.IMPERIAL_FLUID_OUNCE, "impfloz flozimp floz(imp) imperialfloz ukfloz flozuk floz(uk) "
                    + "imperialfluidounce imperialfluidounces")),
    TEMPERATURE("a temperature", "°C or °F", words(
            TemperatureUnit.CELSIUS, "°c c celsius degc degreescelsius",
            TemperatureUnit.FAHRENHEIT, "°f f fahrenheit degf degreesfahrenheit")),
    POWER("a power", "watts, kW or BTU/h", words(
            PowerUnit.WATT, "w watt watts",
            PowerUnit.KILOWATT, "kw kilowatt kilowatts",
            PowerUnit.BTU_PER_HOUR, "btu/h btu/hr btuh btuperhour"));

    private static final String PLAIN_FLUID_OUNCE = "floz|fluidounces?|fluidoz";

    private final String name;
    private final String units;
    private final Map<String, Unit> words;

    Kind(String name, String units, Map<String, Unit> words) {
        this.name = name;
        this.units = units;
        this.words = words;
    }

    /** A unit and its words, one after the other. */
    private static Map<String, Unit> words(Object... unitsAndWords) {
        Map<String, Unit> words = new HashMap<>();
        for (int i = 0; i < unitsAndWords.length; i += 2) {
            for (String word : ((String) unitsAndWords[i + 1]).split(" ")) {
                words.put(word, (Unit) unitsAndWords[i]);
            }
        }
        return Map.copyOf(words);
    }

    /** "a weight" */
    String called() {
        return name;
    }

    /** The units it may be given in, in words. */
    String units() {
        return units;
    }

    /** The unit of that word, if it is one of this kind. Dots, spaces and capitals do not count. */
    Optional<Unit> unit(String word) {
        return Optional.ofNullable(words.get(plain(word)));
    }

    /** The kind that such a word is a unit of. */
    static Optional<Kind> of(String word) {
        return isPlainFluidOunce(word) ? Optional.of(VOLUME)
                : Arrays.stream(values()).filter(kind -> kind.unit(word).isPresent()).findFirst();
    }

    /** "fl oz" without saying whose. */
    static boolean isPlainFluidOunce(String word) {
        return plain(word).matches(PLAIN_FLUID_OUNCE);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[.\\s]", "").replace('º', '°').replace('˚', '°');
    }
}
