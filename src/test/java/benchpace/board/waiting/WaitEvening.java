package benchpace.board.waiting;

import benchpace.board.cooling.PlanCureClock;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** An invented evening of which only the pours and the wait are told, in minutes after its start. */
public final class WaitEvening {
    static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    static final Instant START = Instant.parse("2027-03-04T18:00:00Z");
    static final Plan PLAN = Demo.eveningPlan();

    private final List<Recorded> history = new ArrayList<>();

    public WaitEvening(int seats) {
        record(-30, new ClassEvent.ClassCreated(PLAN, "Thursday", START, IntStream.rangeClosed(1, seats)
                .mapToObj(n -> new ClassEvent.Place(new SeatNumber(n), "")).toList()));
    }

    static Instant at(double minute) {
        return START.plus(Duration.ofMillis(Math.round(minute * 60_000)));
    }

    public WaitEvening pour(double minute, int... seats) {
        for (int seat : seats) {
            record(minute, new ClassEvent.StepFinished(new SeatNumber(seat), PLAN.pour().orElseThrow().id()));
        }
        return this;
    }

    WaitEvening finish(double minute, String step, int seat) {
        return record(minute, new ClassEvent.StepFinished(new SeatNumber(seat), new StepId(step)));
    }

    WaitEvening join(double minute, int seat, String activity) {
        return record(minute, new ClassEvent.ActivityJoined(new SeatNumber(seat), new ActivityId(activity)));
    }

    public WaitEvening record(double minute, ClassEvent event) {
        int seq = history.size() + 1;
        history.add(new Recorded(seq, "c" + seq, "instructor", at(minute), at(minute), event));
        return this;
    }

    /** Told some time after it happened. */
    WaitEvening late(double minute, double told, ClassEvent event) {
        int seq = history.size() + 1;
        history.add(new Recorded(seq, "c" + seq, "instructor", at(minute), at(told), event));
        return this;
    }

    public LiveClass live() {
        return LiveClass.of(history);
    }

    long seq() {
        return history.size();
    }

    static WaitChain chain() {
        return new WaitChain("thursday", new PlanCureClock());
    }

    /** As a board sees it that was started just now. */
    WaitView view(double minute) {
        return chain().at(live(), at(minute));
    }
}
