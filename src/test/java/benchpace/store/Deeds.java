package benchpace.store;

import benchpace.cure.room.RoomFit;
import benchpace.live.ClassEvent;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.pace.StepPrior;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.store.sqlite.Database;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that a board writes down, one after the other without end, each by its number alone: classes set up, taps,
 * classes closed, deleted and erased, their guests forgotten and the file rewritten, candles put on the shelf, handed
 * out and erased, devices let in, settings, ticks, plans, and what classes taught. Done twice, a deed counts once.
 */
public final class Deeds {
    private static final Instant START = ClassOfThree.START;
    private static final int CLASS_LASTS = 40;

    private final Database database;
    private final SqliteEventLog classes;
    private final ShelfLog shelf;

    public Deeds(Database database) {
        this.database = database;
        this.classes = new SqliteEventLog(database);
        this.shelf = new ShelfLog(database);
    }

    /** Does one deed, in one transaction. @param number from 0; all before it were done */
    public void doThe(int number) {
        String before = classId(number - CLASS_LASTS);
        switch (number % (2 * CLASS_LASTS)) { // every second class was set up by mistake
            case CLASS_LASTS + 20 -> classes.delete(before, at(number));
            case CLASS_LASTS + 30 -> classes.erase(before);
            case 20 -> forget(number, before);
            case 30 -> new FileSweep(database).sweep();
            default -> oneOfTen(number);
        }
    }

    private void forget(int number, String classId) {
        if (number > CLASS_LASTS) {
            classes.forgetGuests(classId, new Forgotten(at(number), true),
                    Nameless.ofGuests().all(classes.read(classId)));
        }
    }

    private void oneOfTen(int number) {
        switch (number % 10) {
            case 1 -> onTheShelf(number, (entry, at) -> new ShelfEvent.Placed(entry, at, classId(number),
                    new SeatNumber(1), new ShelfPlace("Window", 1 + number / 10 % 200), at, at.plus(Duration.ofDays(9)),
                    new ClaimWord("maple", 10 + number / 10 % 90), "Guest " + number));
            case 2 -> new Rooms(database).prior("taught-" + number / 10, "The loft");
            case 3 -> onTheShelf(number, ShelfEvent.Collected::new);
            case 4 -> new Rooms(database).learn("taught-" + number / 10, "The loft",
                    Optional.of(new RoomFit(number / 1e6, 0.2, 0.5, 0.1, number)), number, at(number));
            case 5 -> onTheShelf(number, ShelfEvent.Erased::new);
            case 6 -> new StepBeliefs(database).accept("small", "The loft", new StepBeliefs.Accepted(
                    Map.of("wicks", new StepPrior(number / 1e6, 0.1, Double.NaN)), number, at(number)));
            case 7 -> letIn(number);
            case 8 -> onTheSide(number);
            default -> inAClass(number);
        }
    }

    private void onTheSide(int number) {
        if (number % 40 == 28) {
            savePlan(number);
        } else if (number % 40 == 8) {
            new Settings(database).put("counter", Integer.toString(number));
        } else {
            new PrepTicks(database).tick(classId(number), new PrepTicks.Tick("place:item-" + number, "AB", at(number)));
        }
    }

    private void savePlan(int number) {
        SavedPlans plans = new SavedPlans(database);
        Plan plan = TestPlans.evening().as(new PlanId("plan-" + number / 200), "Plan " + number);
        if (plans.versions(plan.id().value()).stream().noneMatch(v -> v.plan().orElseThrow().equals(plan))) {
            plans.add(plan, at(number), new SavedPlans.By("instructor", ""));
        }
    }

    private static Instant at(int number) {
        return START.plusSeconds(number);
    }

    private static String classId(int number) {
        return "class-" + number / CLASS_LASTS;
    }

    private void inAClass(int number) {
        List<Recorded> before = classes.read(classId(number));
        if (before.stream().anyMatch(event -> event.commandId().equals("deed-" + number))) {
            return;
        }
        ClassEvent event = number % CLASS_LASTS == 0 ? ClassOfThree.created().event()
                : number % CLASS_LASTS == CLASS_LASTS - 1 ? new ClassEvent.ClassClosed()
                : new ClassEvent.SeatNoted(new SeatNumber(1 + number % 3), "note " + number);
        classes.append(classId(number), new Recorded(before.size() + 1L, "deed-" + number, "instructor", at(number),
                at(number), event));
    }

    private interface AtTheShelf {
        ShelfEvent event(EntryId entry, Instant at);
    }

    private void onTheShelf(int number, AtTheShelf what) {
        if (shelf.eventOf("deed-" + number).isEmpty()) {
            shelf.append("deed-" + number, List.of(what.event(new EntryId(1 + number / 10), at(number))));
        }
    }

    private void letIn(int number) {
        Sessions sessions = new Sessions(database);
        if (sessions.find("token-" + number).isEmpty()) {
            sessions.create("token-" + number, "helper", "AB", at(number));
        }
    }

    /** Every row of every table. */
    public static List<String> rows(Database database) {
        return database.read(connection -> {
            List<String> rows = new ArrayList<>();
            try (Statement statement = connection.createStatement()) {
                List<String> tables = new ArrayList<>();
                try (ResultSet row = statement.executeQuery("select name from sqlite_master where type = 'table'")) {
                    while (row.next()) {
                        tables.add(row.getString(1));
                    }
                }
                for (String table : tables) {
                    try (ResultSet row = statement.executeQuery("select * from " + table)) {
                        while (row.next()) {
                            StringBuilder text = new StringBuilder(table);
                            for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                                text.append('|').append(row.getString(i));
                            }
                            rows.add(text.toString());
                        }
                    }
                }
            }
            rows.sort(null);
            return rows;
        });
    }
}
