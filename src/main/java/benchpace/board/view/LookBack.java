package benchpace.board.view;

import benchpace.live.LiveClass;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** A class looked back on, at the moment it is asked for. */
public final class LookBack {
    private final Supplier<LiveClass> live;
    private final Supplier<ClassView> view;
    private final ViewMaker maker;
    private final ClassModels models;

    public LookBack(Supplier<LiveClass> live, Supplier<ClassView> view, ViewMaker maker, ClassModels models) {
        this.live = live;
        this.view = view;
        this.maker = maker;
        this.models = models;
    }

    public ClassReport report() {
        return ofOneMoment((then, seen) -> maker.report(seen.id(), then, seen, models));
    }

    /** What the class would have saved with one thing changed. */
    public ClassWhatIf whatIf() {
        return ofOneMoment((then, seen) -> maker.whatIf(seen.id(), then,
                maker.report(seen.id(), then, seen, models), models));
    }

    private <T> T ofOneMoment(BiFunction<LiveClass, ClassView, T> look) {
        LiveClass then;
        ClassView seen;
        do {
            then = live.get();
            seen = view.get();
        } while (seen.seq() != then.seq());
        return look.apply(then, seen);
    }
}
