package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A class under test. Every action goes through {@link Rules#decide} and {@link LiveClass#apply}, as the board does it;
 * an action that the rules refuse fails the test, unless asked for by {@link #refusalOf}. Minutes count from the start
 * of the class, and the clock stands still until a test moves it.
 *
 * <pre>{@code
 * TestClass c = TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(9).finish(2, "wicks");
 * assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WORKING);
 * }</pre>
 */
public final class TestClass {
    /** The start of every class under test. */
    public static final Instant START = Instant.parse("2027-03-04T19:00:00Z");

    private LiveClass live;
    private Instant now;
    private Optional<Instant> madeAt = Optional.empty();

    private TestClass(Plan plan, int seats, Instant createdAt) {
        List<ClassEvent.Place> places = TestPlans.seats(seats).stream()
                .map(number -> new ClassEvent.Place(number, "")).toList();
        ClassEvent created = new ClassEvent.ClassCreated(plan, "Test class", START, places);
        this.live = LiveClass.of(List.of(new Recorded(1, "create", "test", createdAt, createdAt, created)));
        this.now = createdAt;
    }

    /** Created when it starts. */
    public static TestClass of(Plan plan, int seats) {
        return new TestClass(plan, seats, START);
    }

    /** Created at that minute, which may be negative; the clock stands there. */
    public static TestClass createdAtMinute(Plan plan, int seats, long minute) {
        return new TestClass(plan, seats, instant(minute));
    }

    public static TestClass evening(int seats) {
        return of(TestPlans.evening(), seats);
    }

    /** An evening in which everybody has come as far as the pour, opened at minute 20. */
    public static TestClass atThePour(int seats) {
        TestClass c = evening(seats).open("welcome").minute(5).open("wicks").minute(10);
        TestPlans.seats(seats).forEach(seat -> c.finish(seat.value(), "wicks"));
        c.minute(18);
        TestPlans.seats(seats).forEach(seat -> c.finish(seat.value(), "blend"));
        return c.minute(20).open("pour");
    }

    /** That many minutes after the start. */
    public static Instant instant(double minute) {
        return START.plusMillis(Math.round(minute * 60_000));
    }

    // ---- time

    /** Sets the board's clock. */
    public TestClass minute(double minute) {
        now = instant(minute);
        return this;
    }

    /** The next action, and only that, was made at that minute and reaches the board now. */
    public TestClass madeAt(double minute) {
        madeAt = Optional.of(instant(minute));
        return this;
    }

    // ---- actions

    public TestClass open(String step) {
        return wish(new ClassEvent.StepOpened(new StepId(step)));
    }

    public TestClass finish(int seat, String step) {
        return wish(finished(seat, step));
    }

    public TestClass undo(long seq) {
        return wish(new ClassEvent.Undone(seq));
    }

    public TestClass undoLast() {
        return undo(live.seq());
    }

    public TestClass retime(long seq, double toMinute) {
        return wish(new ClassEvent.TapRetimed(seq, instant(toMinute)));
    }

    public TestClass reseat(long seq, int to) {
        return wish(new ClassEvent.TapReseated(seq, new SeatNumber(to)));
    }

    public TestClass pause(int seat) {
        return wish(new ClassEvent.SeatPaused(new SeatNumber(seat)));
    }

    public TestClass resume(int seat) {
        return wish(new ClassEvent.SeatResumed(new SeatNumber(seat)));
    }

    public TestClass expect(int seat) {
        return wish(new ClassEvent.SeatExpected(new SeatNumber(seat)));
    }

    public TestClass arrive(int seat) {
        return arrive(seat, "");
    }

    public TestClass arrive(int seat, String name) {
        return wish(new ClassEvent.SeatArrived(new SeatNumber(seat), name));
    }

    public TestClass leave(int seat) {
        return wish(new ClassEvent.SeatLeft(new SeatNumber(seat)));
    }

    /** The guest of {@code with} shares the candle made at {@code seat}. */
    public TestClass pair(int seat, int with) {
        return wish(new ClassEvent.SeatPaired(new SeatNumber(seat), new SeatNumber(with)));
    }

    public TestClass unpair(int seat) {
        return wish(new ClassEvent.SeatUnpaired(new SeatNumber(seat)));
    }

    public TestClass pourAgain(int seat) {
        return wish(new ClassEvent.PouredAgain(new SeatNumber(seat)));
    }

    public TestClass read(int seat, double celsius) {
        return wish(new ClassEvent.TemperatureRead(new SeatNumber(seat), celsius));
    }

    public TestClass seeSkin(int seat) {
        return wish(new ClassEvent.SkinSeen(new SeatNumber(seat)));
    }

    public TestClass judgeSet(int seat) {
        return wish(new ClassEvent.JudgedSet(new SeatNumber(seat)));
    }

    public TestClass note(int seat, String text) {
        return wish(new ClassEvent.SeatNoted(new SeatNumber(seat), text));
    }

    public TestClass claim(int seat, String helper) {
        return wish(new ClassEvent.HelpClaimed(new SeatNumber(seat), helper));
    }

    public TestClass sorted(int seat, String helper) {
        return wish(new ClassEvent.HelpSorted(new SeatNumber(seat), helper));
    }

    public TestClass openActivity(String activity) {
        return wish(new ClassEvent.ActivityOpened(new ActivityId(activity)));
    }

    public TestClass closeActivity(String activity) {
        return wish(new ClassEvent.ActivityClosed(new ActivityId(activity)));
    }

    public TestClass join(int seat, String activity) {
        return wish(new ClassEvent.ActivityJoined(new SeatNumber(seat), new ActivityId(activity)));
    }

    public TestClass quit(int seat, String activity) {
        return wish(new ClassEvent.ActivityQuit(new SeatNumber(seat), new ActivityId(activity)));
    }

    public TestClass close() {
        return wish(new ClassEvent.ClassClosed());
    }

    /** The event of a tap, to be wished for or refused. */
    public static ClassEvent.StepFinished finished(int seat, String step) {
        return new ClassEvent.StepFinished(new SeatNumber(seat), new StepId(step));
    }

    /** Any other event; the rules must let it stand. */
    public TestClass wish(ClassEvent event) {
        Command command = command(event);
        Decision decision = Rules.decide(live, command, now, Plausibility.ANYTHING);
        if (decision instanceof Decision.Refused refused) {
            throw new AssertionError(event + " was refused: " + refused.reason());
        }
        live = live.apply(new Recorded(live.seq() + 1, command.id(), command.by(), command.at(), now, event));
        return this;
    }

    // ---- questions

    /** What the rules say against this event; the class stays as it is. */
    public Refusal refusalOf(ClassEvent event) {
        Decision decision = Rules.decide(live, command(event), now, Plausibility.ANYTHING);
        if (decision instanceof Decision.Refused refused) {
            return refused.reason();
        }
        throw new AssertionError(event + " was let stand");
    }

    private Command command(ClassEvent event) {
        Command command = new Command("tap-" + (live.seq() + 1), "test", madeAt.orElse(now), event);
        madeAt = Optional.empty();
        return command;
    }

    public LiveClass live() {
        return live;
    }

    public Instant now() {
        return now;
    }

    /** The number of the last event. */
    public long seq() {
        return live.seq();
    }

    public Seat seat(int number) {
        return live.seat(new SeatNumber(number)).orElseThrow();
    }

    public Standing standing(int seat) {
        return live.progress().standing(seat(seat));
    }

    /** The id of the seat's present step; empty if it has none. */
    public String stepOf(int seat) {
        return standing(seat).step().map(step -> step.id().value()).orElse("");
    }

    /** The minute since which the seat stands as it does. */
    public double sinceMinute(int seat) {
        return minuteOf(standing(seat).since());
    }

    /** How long the seat has been as it stands, in minutes. */
    public double minutesIn(int seat) {
        return live.progress().timeIn(seat(seat), standing(seat), now).toMillis() / 60_000.0;
    }

    /** The ids of the steps that the seat jumped over. */
    public List<String> gapsOf(int seat) {
        List<String> gaps = new ArrayList<>();
        live.progress().gaps(seat(seat)).forEach(step -> gaps.add(step.id().value()));
        return gaps;
    }

    /** The minute of the pour that the seat's cure counts from. */
    public Optional<Double> pouredAtMinute(int seat) {
        return live.progress().pouredAt(seat(seat)).map(TestClass::minuteOf);
    }

    public static double minuteOf(Instant instant) {
        return Duration.between(START, instant).toMillis() / 60_000.0;
    }
}
