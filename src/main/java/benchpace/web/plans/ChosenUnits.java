package benchpace.web.plans;

import benchpace.files.Words;
import benchpace.store.Settings;
import benchpace.units.MassUnit;
import benchpace.units.TemperatureUnit;
import benchpace.units.UnitChoice;
import benchpace.units.VolumeUnit;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import java.util.Optional;

/** The units that people read and type in on this board, kept for all its devices. */
public final class ChosenUnits {
    private static final String MASS = "units.mass";
    private static final String VOLUME = "units.volume";
    private static final String TEMPERATURE = "units.temperature";

    private final Settings settings;

    public ChosenUnits(Settings settings) {
        this.settings = settings;
    }

    public UnitChoice now() {
        UnitChoice usual = UnitChoice.METRIC;
        try {
            return new UnitChoice(kept(MASS, MassUnit.class).orElse(usual.mass()),
                    kept(TEMPERATURE, TemperatureUnit.class).orElse(usual.temperature()),
                    kept(VOLUME, VolumeUnit.class).orElse(usual.volume()));
        } catch (IllegalArgumentException unknown) {
            return usual;
        }
    }

    private <E extends Enum<E>> Optional<E> kept(String key, Class<E> type) {
        return settings.get(key).flatMap(word -> Words.constant(type, word));
    }

    /** Each as files spell it; an empty one stays as it is. @throws Refused if there is no such choice */
    UnitChoice choose(String mass, String volume, String temperature) {
        UnitChoice now = now();
        UnitChoice then;
        try {
            then = new UnitChoice(one("mass", mass, now.mass(), MassUnit.class),
                    one("temperature", temperature, now.temperature(), TemperatureUnit.class),
                    one("volume", volume, now.volume(), VolumeUnit.class));
        } catch (IllegalArgumentException notChosen) {
            throw new Refused(Problem.unprocessable("Units that are chosen: " + notChosen.getMessage() + "."));
        }
        settings.put(MASS, Words.of(then.mass()));
        settings.put(VOLUME, Words.of(then.volume()));
        settings.put(TEMPERATURE, Words.of(then.temperature()));
        return then;
    }

    private static <E extends Enum<E>> E one(String field, String word, E otherwise, Class<E> type) {
        return word.isEmpty() ? otherwise : Words.constant(type, word).orElseThrow(() ->
                new Refused(Problem.unprocessable("\"" + field + "\" must be one of " + Words.quoted(Words.all(type))
                        + ".")));
    }
}
