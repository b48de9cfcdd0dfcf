package benchpace.words;

import benchpace.plan.colour.Lead;
import benchpace.plan.colour.Light;
import benchpace.plan.colour.Srgb;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Says what becomes of the colour that a studio chose. */
public final class StudioWords {
    private StudioWords() { }

    /** @param chosen nothing where the usual one will do */
    public static String kept(Optional<Srgb> chosen) {
        return chosen.map(StudioWords::kept).orElse("No colour of your own: the screens keep our green.");
    }

    /** "By day it is darker, so that words in it can be read; by night it is shown as you chose it." */
    private static String kept(Srgb chosen) {
        boolean day = Lead.of(chosen, Light.DAY).lead().equals(chosen);
        boolean night = Lead.of(chosen, Light.NIGHT).lead().equals(chosen);
        if (day && night) {
            return "It is shown as you chose it, by day and by night.";
        }
        String readable = "so that words in it can be read";
        return day ? "By day it is shown as you chose it; by night it is lighter, " + readable + "."
                : night ? "By day it is darker, " + readable + "; by night it is shown as you chose it."
                : "By day it is darker and by night lighter, " + readable + ".";
    }

    /** What it could be taken for, and why nobody will; empty for most colours. */
    public static Optional<String> apart(Srgb chosen) {
        Set<Lead.Resembles> alike = EnumSet.noneOf(Lead.Resembles.class);
        for (Light light : Light.values()) {
            alike.add(Lead.of(chosen, light).resembles(light));
        }
        if (alike.contains(Lead.Resembles.BEHIND)) {
            return Optional.of("It is close to the red of a seat that is behind. That stays as it is, always filled "
                    + "and with its own mark and word, so the two are told apart; another colour is calmer.");
        }
        return alike.contains(Lead.Resembles.SLIPPING)
                ? Optional.of("It is close to the rust of what slips. That stays as it is, always with its own frame "
                + "and word, so the two are told apart; another colour is calmer.") : Optional.empty();
    }

    /** Somebody else changed it between looking and saving. */
    public static Explanation changedMeanwhile() {
        return new Explanation(Explanation.Kind.STALE, "changed-meanwhile", "It was changed meanwhile", "The studio "
                + "was changed on another page meanwhile, so nothing was changed here. Open it anew to look at that, "
                + "or save once more to have it as it is here.");
    }
}
