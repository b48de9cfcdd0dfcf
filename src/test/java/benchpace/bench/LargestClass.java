package benchpace.bench;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Recorded;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.store.EventLog;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** The largest class that a plan may describe, poured at every seat, on a board of its own that keeps it in memory. */
final class LargestClass implements AutoCloseable {
    static final int SEATS = SeatNumber.MOST;
    private static final Instant START = Instant.parse("2027-03-04T18:00:00Z");

    private volatile Instant now = START;
    private int commands;
    private final Boards boards = new Boards(new InMemory(), () -> now,
            new ViewMaker(new RoomCureClock((classId, room) -> RoomFit.untaught()), new PosteriorPaceWatch(),
                    ZoneOffset.UTC), () -> "n" + commands++);
    final ClassBoard board;
    /** One of the usual size beside it. */
    final ClassBoard other;

    /** @param activities how many fill the wait */
    LargestClass(int activities) {
        board = boards.create(plan(activities), "The largest", START, places(SEATS), "instructor");
        other = boards.create(Demo.eveningPlan(), "Beside it", START, places(8), "instructor");
    }

    private static final class InMemory implements EventLog {
        private final Map<String, List<Recorded>> kept = new ConcurrentHashMap<>();

        @Override public void append(String classId, Recorded event) {
            kept.computeIfAbsent(classId, id -> new ArrayList<>()).add(event);
        }

        @Override public List<Recorded> read(String classId) {
            return kept.getOrDefault(classId, List.of());
        }

        @Override public boolean anyRecorded(Instant from, Instant until) {
            return true;
        }

        @Override public List<String> classIds() {
            return List.copyOf(kept.keySet());
        }
    }

    private static List<ClassEvent.Place> places(int seats) {
        return IntStream.rangeClosed(1, seats).mapToObj(n -> new ClassEvent.Place(new SeatNumber(n), "")).toList();
    }

    static Plan plan(int most) {
        Plan evening = Demo.eveningPlan();
        List<Step> steps = new ArrayList<>();
        for (int n = 1; n <= Plan.MOST_STEPS - 4; n++) {
            steps.add(step("s" + n, StepKind.HANDS_ON, Opening.FREE, 2));
        }
        steps.add(step("pour", StepKind.POUR, Opening.FREE, 5));
        steps.add(step("cure", StepKind.CURE, Opening.FREE, 60));
        steps.add(step("trim", StepKind.FINISH, Opening.LED, 5));
        steps.add(step("wrap", StepKind.FINISH, Opening.FREE, 5));
        List<Activity> activities = new ArrayList<>();
        for (int n = 0; n < most; n++) {
            Activity a = evening.activities().get(n % evening.activities().size());
            activities.add(new Activity(new ActivityId("a" + n), "Activity " + n, a.kind(), a.audience(), a.typical(),
                    a.longest(), a.places(), a.needs(), a.interruptible(), "", "", "", ""));
        }
        List<Candle> candles = new ArrayList<>();
        for (int n = 0; n < Plan.MOST_CANDLES; n++) {
            Candle c = evening.candles().get(n % evening.candles().size());
            candles.add(new Candle("c" + n, "Candle " + n, c.vessel(), c.wax(), c.fillGrams() * (1 - 0.01 * n),
                    c.fragranceFraction(), c.roomCelsius(), c.pourCelsius(), c.tableTop()));
        }
        return new Plan(new PlanId("largest"), "The largest", "", "", SEATS, TableShape.ROWS, steps, activities,
                candles);
    }

    private static Step step(String id, StepKind kind, Opening opening, int minutes) {
        return new Step(new StepId(id), "Step " + id, kind, opening, Duration.ofMinutes(minutes),
                Duration.ofMinutes(2), "", "", "");
    }

    void wish(ClassBoard of, ClassEvent event) {
        Answer answer = of.submit(new Command("w" + commands++, "instructor", now, event));
        if (answer instanceof Answer.Refused refused) {
            throw new IllegalStateException(event + " is refused: " + refused.reason());
        }
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    /** Every seat chooses, and pours some seconds after the one before. */
    LargestClass poured() {
        for (int seat = 1; seat <= SEATS; seat++) {
            wish(board, new ClassEvent.CandleChosen(new SeatNumber(seat), "c" + seat % Plan.MOST_CANDLES));
        }
        pass(Duration.ofMinutes(50));
        for (int seat = 1; seat <= SEATS; seat++) {
            pass(Duration.ofSeconds(10));
            wish(board, new ClassEvent.StepFinished(new SeatNumber(seat), new StepId("pour")));
        }
        pass(Duration.ofMinutes(10));
        return this;
    }

    /** A thermometer at one of the candles. @param n how many were read before */
    void read(int n) {
        pass(Duration.ofSeconds(7));
        wish(board, new ClassEvent.TemperatureRead(new SeatNumber(1 + n % SEATS), 55 - 0.05 * n));
    }

    @Override public void close() {
        boards.close();
    }
}
