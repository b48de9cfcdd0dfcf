package benchpace.web.style;

import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.plan.StarterPlans;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.web.screen.style.Situation;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Instants in a class at which, between them, a seat can be seen in each of its states: the recorded evening that comes
 * with the program, with a few taps more where nobody happened to be so, and the beginning of a class that weighs in
 * turns. Folded and judged as any class is.
 */
final class Situations {
    private static final String BY = "instructor";
    private static final int SEATS = 6;

    private final ViewMaker maker;
    private final List<Recorded> evening = Demo.recordedEvening();
    private final Instant begins = evening.get(0).at().truncatedTo(ChronoUnit.HOURS);

    Situations(ZoneId zone) {
        maker = new ViewMaker(new RoomCureClock((id, room) -> RoomFit.untaught()), new PosteriorPaceWatch(), zone);
    }

    List<Situation> all() {
        return List.of(
                seen("Before the class", 29),
                seen("A talk", 34),
                seen("Some are done, one pauses, and one says so by phone", 43.4,
                        new ClassEvent.SeatPaused(new SeatNumber(8)),
                        new ClassEvent.DoneHinted(new SeatNumber(6), new StepId("vessel"))),
                seen("A tap may have been forgotten", 48.1),
                seen("A question", 51.9),
                seen("Somebody just helped", 53.24),
                turns(),
                seen("Behind, as the others wait", 68),
                seen("Behind, and somebody is on the way", 69),
                seen("Candles are setting", 80),
                seen("Candles may be ready", 102),
                seen("The hand test", 107.4),
                lookedAt("Past their ranges, and nobody has tried them", 106, 131),
                seen("The finish", 113),
                seen("Over", 141));
    }

    /** The evening at a minute after its full hour, with what is tapped beside it until then. */
    private Situation seen(String name, double minute, ClassEvent... more) {
        List<Recorded> log = until(minute);
        for (ClassEvent event : more) {
            add(log, at(minute), event);
        }
        return view(name, answered(log), at(minute));
    }

    /** The evening as it would have stood at a minute had nobody tapped anything for a while. */
    private Situation lookedAt(String name, double untilMinute, double minute) {
        return view(name, answered(until(untilMinute)), at(minute));
    }

    /** Guests' phones have something to say once the class has begun. */
    private static List<Recorded> answered(List<Recorded> log) {
        if (LiveClass.of(log).begun()) {
            add(log, log.get(log.size() - 1).at(), new ClassEvent.GuestsMayTell(true));
        }
        return log;
    }

    private List<Recorded> until(double minute) {
        return new ArrayList<>(evening.stream().filter(e -> !e.recordedAt().isAfter(at(minute))).toList());
    }

    private Instant at(double minute) {
        return begins.plusSeconds(Math.round(minute * 60));
    }

    /** Six who are through with the fragrance and weigh on two scales. */
    private Situation turns() {
        List<Recorded> log = new ArrayList<>();
        add(log, begins, new ClassEvent.ClassCreated(StarterPlans.plan("travelling-class"), "Travelling class", begins,
                seats().mapToObj(seat -> new ClassEvent.Place(new SeatNumber(seat), "")).toList()));
        Instant at = begins;
        for (String step : List.of("welcome", "vessel", "wicks", "fragrance", "mix")) {
            add(log, at, new ClassEvent.StepOpened(new StepId(step)));
            at = at.plus(Duration.ofMinutes(4));
            if (!step.equals("welcome") && !step.equals("mix")) {
                for (int seat : seats().toArray()) {
                    add(log, at, new ClassEvent.StepFinished(new SeatNumber(seat), new StepId(step)));
                }
            }
        }
        return view("Turns at the scales", log, at.minus(Duration.ofMinutes(3)));
    }

    private static IntStream seats() {
        return IntStream.rangeClosed(1, SEATS);
    }

    private static void add(List<Recorded> log, Instant at, ClassEvent event) {
        int seq = log.size() + 1;
        log.add(new Recorded(seq, "sample-" + seq, BY, at, at, event));
    }

    private Situation view(String name, List<Recorded> log, Instant now) {
        return new Situation(name, maker.view("sample", LiveClass.of(log), now));
    }
}
