package benchpace.simulation;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes a failing script short: leaves out halves, quarters and so on down to single acts as long as the same invariant
 * still breaks. Time is never left out, only joined, so that what is left happens when it did.
 */
final class Shrinking {
    private static final int MOST_TRIES = 400;

    private Shrinking() { }

    /** What breaks when the script is played, if anything does. */
    static Optional<Broken> broken(Script script) {
        try (Performance performance = new Performance(script.setting())) {
            for (Act act : script.acts()) {
                performance.play(act);
            }
            return Optional.empty();
        } catch (Broken broken) {
            return Optional.of(broken);
        }
    }

    /** @param check the invariant that breaks */
    static Script shrunk(Script failing, String check) {
        Script shortest = failing;
        int tries = 0;
        for (int piece = Math.max(1, shortest.acts().size() / 2); piece >= 1; piece /= 2) {
            for (int from = 0; from < shortest.acts().size() && tries < MOST_TRIES; tries++) {
                Script without = without(shortest, from, Math.min(from + piece, shortest.acts().size()));
                boolean shorter = without.acts().size() < shortest.acts().size();
                if (shorter && broken(without).filter(b -> b.check().equals(check)).isPresent()) {
                    shortest = without;
                } else {
                    from += piece;
                }
            }
        }
        return shortest;
    }

    private static Script without(Script script, int from, int until) {
        List<Act> kept = new ArrayList<>();
        for (int i = 0; i < script.acts().size(); i++) {
            Act act = script.acts().get(i);
            if (act instanceof Act.Pass pass) {
                Act last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
                if (last instanceof Act.Pass before) {
                    kept.set(kept.size() - 1, new Act.Pass(joined(before, pass)));
                } else {
                    kept.add(pass);
                }
            } else if (i < from || i >= until) {
                kept.add(act);
            }
        }
        return new Script(script.setting(), kept);
    }

    private static Duration joined(Act.Pass before, Act.Pass pass) {
        return before.by().plus(pass.by());
    }
}
