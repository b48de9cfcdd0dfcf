package benchpace.board.view;

import benchpace.board.attempt.Model;
import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.CureClock;
import benchpace.board.pacing.ClassTracks;
import benchpace.live.LiveClass;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.SeatNumber;
import benchpace.report.whatif.Answer;
import benchpace.report.whatif.Past;
import benchpace.report.whatif.WhatIf;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Goes through a class once more with one thing changed. Made when somebody asks; nothing of it is kept. */
final class WhatIfMaker {
    /** The same class has the same answers whenever it is asked. */
    private static final long SEED = 1;
    /** Vessels a quarter smaller, as before a class. */
    private static final double FILL_SHARE = 0.75;

    private final LiveClass live;
    private final ClassReport report;
    private final ClassModels models;

    /** @param report the class looked back on, whose figures it rests on */
    WhatIfMaker(LiveClass live, ClassReport report, ClassModels models) {
        this.live = live;
        this.report = report;
        this.models = models;
    }

    ClassWhatIf made(Map<SeatNumber, CandleClock> clocks, Supplier<PaceEngine> engine, CureClock cure) {
        if (!models.attempts().among(Model.HELD, Model.TOOK, Model.FLAGS).models().isEmpty()) {
            return without(ClassWhatIf.Standing.MISSING);
        }
        boolean over = live.closedAt().isPresent() || report.waitedFor().isEmpty();
        if (report.held().isEmpty() || !over) {
            return without(ClassWhatIf.Standing.TOO_EARLY);
        }
        return models.attempts().of(Model.WHAT_IF, live.seq(), report.view().now(), () -> {
            List<Answer> answers = WhatIf.of(new Past(live.plan(), ClassTracks.of(live, clocks), report.candles(),
                    engine.get(), report.flags(), report.took(),
                    cure.smaller(report.view().id(), live, FILL_SHARE)), SEED, ClassWhatIf.WAYS);
            return new ClassWhatIf(live.plan(), report, ClassWhatIf.Standing.TOLD, answers);
        }, () -> without(ClassWhatIf.Standing.MISSING));
    }

    private ClassWhatIf without(ClassWhatIf.Standing standing) {
        return new ClassWhatIf(live.plan(), report, standing, List.of());
    }
}
