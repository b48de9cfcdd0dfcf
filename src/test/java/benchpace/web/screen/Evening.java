package benchpace.web.screen;

import benchpace.board.cooling.CutAway;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassWhatIf;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.plan.PlanFile;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.TableShape;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** An invented class, told tap by tap in minutes after its start, and seen as the board sees it. */
public final class Evening {
    public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    /** The mark of the tablet on which all of it was tapped. */
    public static final String TABLET = "tablet";
    public static final Instant START = Instant.parse("2027-03-04T18:00:00Z");
    private static final List<String> NAMES = List.of("Ada", "Bruno", "", "Cleo", "Dag", "Edda", "Finn", "", "Greta",
            "Hugo", "Ina", "Jonte");

    private static final RoomCureClock COMPUTED = new RoomCureClock((id, room) -> RoomFit.untaught());

    private final List<Recorded> history = new ArrayList<>();

    private Evening(Plan plan, int seats, List<String> names) {
        List<ClassEvent.Place> places = IntStream.rangeClosed(1, seats)
                .mapToObj(n -> new ClassEvent.Place(new SeatNumber(n), names.get((n - 1) % names.size())))
                .toList();
        record(-60, new ClassEvent.ClassCreated(plan, plan.name(), START, places));
    }

    public static Evening of(String plan, int seats) {
        return new Evening(plan(plan), seats, NAMES);
    }

    public static Evening of(Plan plan, int seats, List<String> names) {
        return new Evening(plan, seats, names);
    }

    private static Plan read(String name) {
        try {
            return PlanFile.read(Path.of("demo-data/plans/" + name + ".json")).ifSound().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A plan that ships, promising the sum of its steps, so that its evenings are early, kept and late. */
    public static Plan plan(String name) {
        return plan(name, read(name).table());
    }

    public static Plan plan(String name, TableShape shape) {
        Plan plan = read(name);
        return new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), shape, plan.steps(),
                plan.activities(), plan.candles());
    }

    public Evening open(double minute, String step) {
        return record(minute, new ClassEvent.StepOpened(new StepId(step)));
    }

    /** These seats finish the step, a few seconds apart. */
    public Evening done(double minute, String step, int... seats) {
        double at = minute;
        for (int seat : seats) {
            record(at, new ClassEvent.StepFinished(new SeatNumber(seat), new StepId(step)));
            at += 0.2;
        }
        return this;
    }

    public Evening event(double minute, ClassEvent event) {
        return record(minute, event);
    }

    private Evening record(double minute, ClassEvent event) {
        Instant at = at(minute);
        int seq = history.size() + 1;
        history.add(new Recorded(seq, "c" + seq, "instructor", TABLET, at, at, event));
        return this;
    }

    static Instant at(double minute) {
        return START.plus(Duration.ofSeconds(Math.round(minute * 60)));
    }

    public static int[] seats(int from, int to) {
        return IntStream.rangeClosed(from, to).toArray();
    }

    public LiveClass live() {
        return LiveClass.of(history);
    }

    public ClassView view(double minute) {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZONE).view("evening", live(), at(minute));
    }

    /** The same with the cure computed, in a room that has taught nothing. */
    public ClassView computed(double minute) {
        return new ViewMaker(COMPUTED, new PosteriorPaceWatch(), ZONE).view("evening", live(), at(minute));
    }

    /** The evening looked back on, by the plan's cure. */
    public ClassReport report(double minute) {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZONE)
                .report("evening", live(), view(minute));
    }

    /** What would have saved it time, the cure computed. */
    public ClassWhatIf whatIf(double minute) {
        ViewMaker maker = new ViewMaker(COMPUTED, new PosteriorPaceWatch(), ZONE);
        return maker.whatIf("evening", live(), maker.report("evening", live(), computed(minute)),
                maker.models("evening"));
    }

    /** A seat's candle cut open. */
    Optional<CutAway> cutAway(int seat, double minute) {
        return COMPUTED.cutAway("evening", live(), new SeatNumber(seat), at(minute));
    }
}
