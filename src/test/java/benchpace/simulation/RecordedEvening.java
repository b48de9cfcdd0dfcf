package benchpace.simulation;

import benchpace.board.cooling.Plausible;
import benchpace.files.log.RecordedClass;
import benchpace.files.plan.PlanFile;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Decision;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Rules;
import benchpace.live.Setup;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Makes the evening that comes with the program, act by act through the rules of the class: the same each time. Who
 * changes events or rules makes the file anew by {@link #main}, and looks whether {@link RecordedEveningTest} still
 * sees in it what it is there to show.
 */
final class RecordedEvening {
    static final Path FILE = Path.of("demo-data/evenings/tallow-loft.jsonl");
    static final Instant START = Instant.parse("2027-03-04T18:30:00Z");
    private static final String TABLET = "tablet";
    private static final String PHONE = "phone";

    private LiveClass live;

    private RecordedEvening() { }

    /** Writes the file. */
    public static void main(String[] args) throws IOException {
        Files.createDirectories(FILE.getParent());
        Files.writeString(FILE, text());
    }

    static String text() {
        return RecordedClass.write(log());
    }

    static List<Recorded> log() {
        RecordedEvening evening = new RecordedEvening();
        evening.setUp();
        evening.firstSteps();
        evening.wax();
        evening.waiting();
        evening.home();
        return evening.live.log();
    }

    private void setUp() {
        Plan plan = plan();
        Instant at = at("-14:20");
        Setup setup = new Setup(plan, "An evening at the Tallow Loft", START, Demo.eveningRoster().places());
        live = LiveClass.of(List.of(new Recorded(1, Command.own("create"), "instructor", TABLET, at, at,
                new ClassEvent.ClassCreated(setup))));
        act("-6:48", new ClassEvent.RoomRead(20.5));
        act("-1:17", new ClassEvent.SeatExpected(seat(6)));
    }

    /** The demo class's, for this loft: glasses of this size are firm sooner, and guests were told so. */
    private static Plan plan() {
        ObjectNode plan = PlanFile.write(Demo.eveningPlan());
        plan.get("steps").forEach(step -> {
            if (step.get("id").textValue().equals("cure")) {
                ((ObjectNode) step).put("minutes", 45);
            }
        });
        ((ObjectNode) plan.get("prep")).put("promisedMinutes", 105);
        return PlanFile.read(plan).ifSound().orElseThrow();
    }

    private void firstSteps() {
        open("0:52", "welcome");
        note("1:10", "Nothing is red: nobody needs you.");
        act("4:41", new ClassEvent.SeatPaired(seat(2), seat(3)));
        done("7:58", "vessel", 1, 4, 8);
        done("8:36", "vessel", 2, 7);
        done("9:07", "vessel", 5);
        open("9:21", "wicks");
        act("11:37", new ClassEvent.SeatArrived(seat(6), "Ines"));
        done("12:44", "wicks", 7, 2);
        done("13:11", "wicks", 1, 5, 4);
        open("13:38", "fragrance");
        done("13:58", "vessel", 6);
        note("14:09", "Seat 8's tap is missing: likely done.");
        done("17:05", "wicks", 6);
        done("18:02", "fragrance", 1, 7, 2);
        theForgottenTick();
        done("19:16", "fragrance", 5);
        open("20:27", "before-wax");
        act("20:58", new ClassEvent.PourRead(62.5));
        done("21:33", "fragrance", 6);
        theStragglerSomebodySees();
    }

    /** Seat 8's wick was set with the others', and nobody tapped: the next tap finds it, and says when it was. */
    private void theForgottenTick() {
        done("18:17", "wicks", 8);
        long tick = live.seq();
        done("18:20", "fragrance", 8);
        act("18:47", new ClassEvent.TapRetimed(tick, at("12:53")));
    }

    /** Seat 4 cannot choose between two; the helper's phone says so. */
    private void theStragglerSomebodySees() {
        note("21:42", "Seat 4 is slow: asked about, then red.");
        helper("22:06", new ClassEvent.HelpClaimed(seat(4), "MO"));
        helper("23:12", new ClassEvent.HelpSorted(seat(4), "MO"));
        helper("23:17", new ClassEvent.StepFinished(seat(4), new StepId("fragrance")));
    }

    private void wax() {
        open("23:24", "mix");
        done("27:08", "mix", 2, 7, 4);
        done("27:51", "mix", 8, 5, 6);
        open("28:42", "pour");
        note("31:21", "Nobody sees seat 1: look what it costs.");
        done("31:34", "pour", 7, 8, 2);
        done("32:22", "pour", 4, 5, 6);
        done("33:49", "centre", 7, 2, 8, 4, 6, 5);
    }

    private void waiting() {
        openActivity("34:31", "labels");
        join("34:47", "labels", 2, 3, 7, 4);
        openActivity("35:36", "match-jar");
        join("35:52", "match-jar", 6, 8);
        theStragglerSeenLate();
        openActivity("41:20", "browse");
        join("41:33", "browse", 5);
        done("43:20", "pour", 1);
        done("44:46", "centre", 1);
        join("45:13", "browse", 1);
        note("45:31", "Helped at last. Seat 5 is poured anew.");
        quit("47:18", "labels", 2, 3, 4, 7);
        closeActivity("50:42", "match-jar");
        openActivity("51:09", "drinks");
        act("52:26", new ClassEvent.SkinSeen(seat(7)));
        act("57:48", new ClassEvent.RoomRead(20));
        act("58:36", new ClassEvent.TemperatureRead(seat(2), 47.5));
        note("58:49", "The wait: ranges, and things to do.");
        theEarlyLeaver();
        closeActivity("66:12", "drinks");
        openActivity("66:30", "tidy");
        closeActivity("71:19", "tidy");
        closeActivity("72:05", "labels");
    }

    /** Seat 7 has a bus to catch, and the candle is still soft. */
    private void theEarlyLeaver() {
        act("62:12", new ClassEvent.SeatLeft(seat(7)));
        note("62:20", "One candle measured: all ranges move.");
        act("62:31", new ClassEvent.SeatNoted(seat(7), "candle is on the shelf, upper 3"));
    }

    /** Seat 1 waits for a scale, and everybody looks at the jugs. */
    private void theStragglerSeenLate() {
        helper("38:31", new ClassEvent.HelpClaimed(seat(1), "MO"));
        act("39:15", new ClassEvent.PouredAgain(seat(5)));
        act("39:27", new ClassEvent.SeatNoted(seat(5), "wick fell over, poured anew"));
        note("39:40", "Seat 7 leaves: its candle is shelved.");
        helper("40:52", new ClassEvent.HelpSorted(seat(1), "MO"));
        helper("40:57", new ClassEvent.StepFinished(seat(1), new StepId("mix")));
    }

    private void home() {
        note("76:12", "Now a hand decides, not the clock.");
        act("76:24", new ClassEvent.JudgedSet(seat(2)));
        act("76:53", new ClassEvent.JudgedSet(seat(8)));
        act("77:20", new ClassEvent.JudgedSet(seat(4)));
        open("77:46", "trim");
        act("79:38", new ClassEvent.JudgedSet(seat(6)));
        openActivity("80:02", "wrapping");
        done("81:50", "trim", 2, 4, 8);
        done("83:31", "trim", 6);
        act("86:27", new ClassEvent.JudgedSet(seat(5)));
        done("88:16", "wrap", 2, 8);
        done("89:12", "trim", 5);
        done("90:04", "wrap", 4, 6);
        done("95:19", "wrap", 5);
        act("95:48", new ClassEvent.JudgedSet(seat(1)));
        done("99:05", "trim", 1);
        note("104:50", "Seat 1's candle is last: home is late.");
        done("105:40", "wrap", 1);
        closeActivity("105:52", "wrapping");
        open("106:03", "farewell");
        act("110:34", new ClassEvent.ClassClosed());
    }

    // ---- acts

    private void open(String at, String step) {
        act(at, new ClassEvent.StepOpened(new StepId(step)));
    }

    private void done(String at, String step, int... seats) {
        inOneGo(at, seats, seat -> new ClassEvent.StepFinished(seat(seat), new StepId(step)));
    }

    /** Several seats tapped one after another, as it is done: a few seconds apart, and for most of them late. */
    private void inOneGo(String at, int[] seats, IntFunction<ClassEvent> event) {
        Instant made = at(at);
        for (int seat : seats) {
            record(made, made, "instructor", TABLET, event.apply(seat));
            made = made.plusMillis(2_300 + 700L * (seat % 4));
        }
    }

    /** What there is to see, for whoever watches. */
    private void note(String at, String words) {
        act(at, new ClassEvent.ClassNoted(words));
    }

    private void openActivity(String at, String activity) {
        act(at, new ClassEvent.ActivityOpened(new ActivityId(activity)));
    }

    private void closeActivity(String at, String activity) {
        act(at, new ClassEvent.ActivityClosed(new ActivityId(activity)));
    }

    private void join(String at, String activity, int... seats) {
        inOneGo(at, seats, seat -> new ClassEvent.ActivityJoined(seat(seat), new ActivityId(activity)));
    }

    private void quit(String at, String activity, int... seats) {
        inOneGo(at, seats, seat -> new ClassEvent.ActivityQuit(seat(seat), new ActivityId(activity)));
    }

    private void act(String at, ClassEvent event) {
        record(at(at), at(at), "instructor", TABLET, event);
    }

    private void helper(String at, ClassEvent event) {
        record(at(at), at(at), "MO", PHONE, event);
    }

    private void record(Instant now, Instant made, String by, String device, ClassEvent event) {
        Command command = new Command("recorded." + (live.seq() + 1), by, device, made, event);
        Decision decision = Rules.decide(live, command, now, Plausible::refusal);
        if (decision instanceof Decision.Refused refused) {
            throw new AssertionError(event + " at " + Duration.between(START, now) + " was refused: "
                    + refused.reason());
        }
        if (now.isBefore(live.lastRecordedAt())) {
            throw new AssertionError(event + " at " + Duration.between(START, now) + " is told before the act above");
        }
        live = live.apply(new Recorded(live.seq() + 1, command.id(), by, device, made, now, event));
    }

    private static SeatNumber seat(int number) {
        return new SeatNumber(number);
    }

    /** Minutes and seconds after the start, {@code "12:44"}; or before it. */
    static Instant at(String clock) {
        boolean before = clock.startsWith("-");
        String[] parts = (before ? clock.substring(1) : clock).split(":");
        Duration after = Duration.ofMinutes(Long.parseLong(parts[0])).plusSeconds(Long.parseLong(parts[1]));
        return before ? START.minus(after) : START.plus(after);
    }
}
