package benchpace.web.screen;

import benchpace.board.ClassReport;
import benchpace.board.ClassView;
import benchpace.board.CutAway;
import benchpace.board.PlanCureClock;
import benchpace.board.PosteriorPaceWatch;
import benchpace.board.RoomCureClock;
import benchpace.board.ViewMaker;
import benchpace.cure.RoomFit;
import benchpace.files.PlanFile;
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
final class Evening {
    static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    /** The mark of the tablet on which all of it was tapped. */
    static final String TABLET = "tablet";
    static final Instant START = Instant.parse("2027-03-04T18:00:00Z");
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

    static Evening of(String plan, int seats) {
        return new Evening(plan(plan), seats, NAMES);
    }

    static Evening of(Plan plan, int seats, List<String> names) {
        return new Evening(plan, seats, names);
    }

    static Plan plan(String name) {
        try {
            return PlanFile.read(Path.of("demo-data/plans/" + name + ".json")).ifSound().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Plan plan(String name, TableShape shape) {
        Plan plan = plan(name);
        return new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), shape, plan.steps(),
                plan.activities(), plan.candles());
    }

    Evening open(double minute, String step) {
        return record(minute, new ClassEvent.StepOpened(new StepId(step)));
    }

    /** These seats finish the step, a few seconds apart. */
    Evening done(double minute, String step, int... seats) {
        double at = minute;
        for (int seat : seats) {
            record(at, new ClassEvent.StepFinished(new SeatNumber(seat), new StepId(step)));
            at += 0.2;
        }
        return this;
    }

    Evening event(double minute, ClassEvent event) {
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

    static int[] seats(int from, int to) {
        return IntStream.rangeClosed(from, to).toArray();
    }

    LiveClass live() {
        return LiveClass.of(history);
    }

    ClassView view(double minute) {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZONE).view("evening", live(), at(minute));
    }

    /** The same with the cure computed, in a room that has taught nothing. */
    ClassView computed(double minute) {
        return new ViewMaker(COMPUTED, new PosteriorPaceWatch(), ZONE).view("evening", live(), at(minute));
    }

    /** The evening looked back on, by the plan's cure. */
    ClassReport report(double minute) {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZONE)
                .report("evening", live(), view(minute));
    }

    /** A seat's candle cut open. */
    Optional<CutAway> cutAway(int seat, double minute) {
        return COMPUTED.cutAway("evening", live(), new SeatNumber(seat), at(minute));
    }
}
