package benchpace.simulation;

import benchpace.board.cooling.Plausible;
import benchpace.files.log.RecordedClass;
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
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

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
        Plan plan = Demo.eveningPlan();
        Instant at = at("-14:20");
        Setup setup = new Setup(plan, "An evening at the Tallow Loft", START, Demo.eveningRoster().places());
        live = LiveClass.of(List.of(new Recorded(1, Command.own("create"), "instructor", TABLET, at, at,
                new ClassEvent.ClassCreated(setup))));
        act("-6:48", new ClassEvent.RoomRead(20.5));
        act("-1:17", new ClassEvent.SeatExpected(seat(6)));
    }

    private void firstSteps() {
        open("0:52", "welcome");
        act("4:41", new ClassEvent.SeatPaired(seat(2), seat(3)));
        done("8:03", "vessel", 1, 4, 8);
        done("8:36", "vessel", 2, 7);
        done("9:12", "vessel", 5);
        open("9:21", "wicks");
        act("11:37", new ClassEvent.SeatArrived(seat(6), "Ines"));
        done("12:44", "wicks", 7, 2, 8);
        done("13:26", "wicks", 1, 5);
        done("13:58", "vessel", 6);
        open("14:11", "fragrance");
        done("17:07", "wicks", 6);
        helper("17:31", new ClassEvent.HelpClaimed(seat(4), "MO"));
        helper("18:49", new ClassEvent.HelpSorted(seat(4), "MO"));
        helper("18:54", new ClassEvent.StepFinished(seat(4), new StepId("wicks")));
        done("18:58", "fragrance", 1, 7, 2, 5);
        open("20:46", "before-wax");
        done("22:19", "fragrance", 4, 6);
    }

    private void wax() {
        act("22:40", new ClassEvent.PourRead(62.5));
        open("23:04", "mix");
        madeAt("25:17", "19:05", new ClassEvent.StepFinished(seat(8), new StepId("fragrance")));
        done("27:02", "mix", 2, 7, 4);
        done("27:40", "mix", 8, 5, 6);
        open("28:22", "pour");
        done("31:10", "pour", 7, 8, 2);
        done("31:49", "pour", 4, 5, 6);
        done("33:30", "centre", 7, 2, 8, 4, 6, 5);
        helper("36:58", new ClassEvent.HelpClaimed(seat(1), "MO"));
        act("37:40", new ClassEvent.PouredAgain(seat(5)));
        helper("39:21", new ClassEvent.HelpSorted(seat(1), "MO"));
        helper("39:26", new ClassEvent.StepFinished(seat(1), new StepId("mix")));
        done("41:48", "pour", 1);
        done("43:15", "centre", 1);
    }

    private void waiting() {
        openActivity("45:11", "labels");
    }

    private void home() {
    }

    // ---- acts

    private void open(String at, String step) {
        act(at, new ClassEvent.StepOpened(new StepId(step)));
    }

    /** Several seats ticked in one go, as it is done: a few seconds apart, the later ones late. */
    private void done(String at, String step, int... seats) {
        Instant made = at(at);
        for (int seat : seats) {
            record(made, made, "instructor", TABLET, new ClassEvent.StepFinished(seat(seat), new StepId(step)));
            made = made.plusMillis(2_300 + 700L * (seat % 4));
        }
    }

    private void openActivity(String at, String activity) {
        act(at, new ClassEvent.ActivityOpened(new ActivityId(activity)));
    }

    private void act(String at, ClassEvent event) {
        record(at(at), at(at), "instructor", TABLET, event);
    }

    private void madeAt(String at, String made, ClassEvent event) {
        record(at(at), at(made), "instructor", TABLET, event);
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
    private static Instant at(String clock) {
        boolean before = clock.startsWith("-");
        String[] parts = (before ? clock.substring(1) : clock).split(":");
        Duration after = Duration.ofMinutes(Long.parseLong(parts[0])).plusSeconds(Long.parseLong(parts[1]));
        return before ? START.minus(after) : START.plus(after);
    }
}
