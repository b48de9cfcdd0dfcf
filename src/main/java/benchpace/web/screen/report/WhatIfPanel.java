package benchpace.web.screen.report;

import benchpace.board.view.ClassWhatIf;
import benchpace.plan.Plan;
import benchpace.report.whatif.Answer;
import benchpace.report.whatif.ChangedPlan;
import benchpace.report.whatif.Saving;
import benchpace.words.report.WhatIfWords;
import java.util.List;
import java.util.Map;

/**
 * What a class would have saved with one thing changed, below its look back.
 *
 * @param nothing     why there is nothing to say; empty if there is
 * @param suggestions the few worth making, the best first
 * @param rows        all that was tried, what saves most first
 * @param basis       what they rest on
 */
public record WhatIfPanel(String classId, String nothing, List<Row> suggestions, List<Row> rows, String basis) {

    /**
     * A change.
     *
     * @param key     what it is called in addresses
     * @param saves   whether it surely saves something
     * @param copyId  the plan in which it was made already; empty if in none
     * @param offered whether it can be made in a copy of the plan
     * @param advice  what to do instead; empty if it can
     */
    public record Row(String key, String change, String saving, boolean saves, String evidence, String assumed,
                      String copyId, String copyName, boolean offered, String advice) { }

    /** @param copies plans in which a change was made already, by its key */
    public static WhatIfPanel of(ClassWhatIf whatIf, Map<String, Plan> copies) {
        return new WhatIfPanel(whatIf.report().view().id(), WhatIfWords.nothing(whatIf.standing()),
                whatIf.suggestions().stream().map(a -> row(a, whatIf, copies)).toList(),
                whatIf.answers().stream().map(a -> row(a, whatIf, copies)).toList(), WhatIfWords.basis());
    }

    private static Row row(Answer answer, ClassWhatIf whatIf, Map<String, Plan> copies) {
        Plan plan = whatIf.plan();
        String key = answer.change().key(plan);
        boolean offered = ChangedPlan.of(plan, answer.change()).isPresent();
        boolean saves = answer.saving().verdict() == Saving.Verdict.SAVES;
        Plan copy = copies.get(key);
        return new Row(key, WhatIfWords.change(answer.change(), plan), WhatIfWords.saving(answer.saving()), saves,
                WhatIfWords.evidence(answer.change(), whatIf), WhatIfWords.assumed(answer.change(), plan),
                copy == null ? "" : copy.id().value(), copy == null ? "" : copy.name(), offered,
                offered || !saves ? "" : WhatIfWords.advice(answer.change()));
    }
}
