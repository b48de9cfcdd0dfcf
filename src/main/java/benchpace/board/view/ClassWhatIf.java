package benchpace.board.view;

import benchpace.plan.Plan;
import benchpace.report.whatif.Answer;
import benchpace.report.whatif.WhatIf;
import java.util.List;
import java.util.Optional;

/**
 * What a class would have saved with one thing changed.
 *
 * @param plan     what it was meant to be, and what a copy is made of
 * @param report   the look back whose figures it rests on
 * @param standing whether there is anything to say
 * @param answers  what saves most first; none unless {@link Standing#TOLD}
 */
public record ClassWhatIf(Plan plan, ClassReport report, Standing standing, List<Answer> answers) {
    /** How many ways each answer rests on. */
    public static final int WAYS = WhatIf.USUAL;

    /** Whether there is anything to say. */
    public enum Standing {
        TOLD,
        /** Not every candle has been poured yet, or there is none. */
        TOO_EARLY,
        /** It cannot be worked out just now. */
        MISSING
    }

    public ClassWhatIf {
        answers = List.copyOf(answers);
    }

    public List<Answer> suggestions() {
        return WhatIf.suggestions(answers);
    }

    /** @param key of a change, as its address has it */
    public Optional<Answer> answer(String key) {
        return answers.stream().filter(a -> a.change().key(plan).equals(key)).findFirst();
    }
}
