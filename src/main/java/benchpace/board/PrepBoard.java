package benchpace.board;

import benchpace.board.prep.EveningOdds;
import benchpace.board.prep.Occasion;
import benchpace.board.prep.Odds;
import benchpace.board.prep.PrepSheets;
import benchpace.board.prep.Ticked;
import benchpace.board.time.BoardTime;
import benchpace.cure.room.RoomFit;
import benchpace.plan.Plan;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.evening.Beliefs;
import benchpace.prep.evening.Setting;
import benchpace.prep.sheet.PrepSheet;
import benchpace.store.PrepTicks;
import benchpace.store.PrepTicks.Tick;
import benchpace.store.Settings;
import benchpace.store.sqlite.Database;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The day before, of every class: its sheet, the odds of its evening, and what is ticked off, with the one place where
 * that changes. A tick is on disk before any screen shows it; the same tick again changes nothing, so that two devices
 * that tick one thing at once have ticked it once.
 */
public final class PrepBoard implements AutoCloseable {
    private static final String REGION = "prep.region";

    private final PrepTicks store;
    private final Settings settings;
    private final Boards boards;
    private final BoardTime clock;
    private final PrepSheets sheets;
    private final EveningOdds odds;
    private final Map<String, Ticked> classes = new LinkedHashMap<>();
    private long revision;

    /** Opens what the store holds. */
    public PrepBoard(Database database, Boards boards, InstantSource clock) {
        this(database, boards, clock, new PrepSheets(), new EveningOdds());
    }

    /** @param sheets and {@code odds} that work them out */
    public PrepBoard(Database database, Boards boards, InstantSource clock, PrepSheets sheets, EveningOdds odds) {
        this.store = new PrepTicks(database);
        this.settings = new Settings(database);
        this.boards = boards;
        this.clock = BoardTime.of(clock);
        this.sheets = sheets;
        this.odds = odds;
        store.all().forEach((id, ticks) -> classes.put(id, new Ticked(0, ticks)));
    }

    /** Worked out once. @throws IllegalArgumentException if more candles are chosen than seats, or one is unknown */
    public PrepSheet sheet(Occasion occasion) {
        return sheets.of(occasion);
    }

    /** A class's evening, by what the class starts from. */
    public Setting setting(ClassBoard board) {
        return Occasion.of(board.live()).setting(Beliefs.of(
                boards.stepLessons().map(s -> s.of(board.id(), board.live())).orElse(Map.of()),
                boards.lessons().map(l -> l.of(board.id(), board.live().plan().place()))
                        .orElseGet(RoomFit::untaught)));
    }

    /** The evening of a plan's next class. */
    public Setting setting(Occasion occasion) {
        Plan plan = occasion.plan();
        return occasion.setting(Beliefs.of(
                boards.stepLessons().map(s -> s.next(plan.id().value(), plan.place())).orElse(Map.of()),
                boards.lessons().map(l -> l.next(plan.place())).orElseGet(RoomFit::untaught)));
    }

    /** The odds of a plan's next class. */
    public Odds odds(Occasion occasion) {
        return odds.of(setting(occasion), () -> { });
    }

    /** Where evenings are simulated. */
    public EveningOdds odds() {
        return odds;
    }

    /** Where candles are given away or sold, as far as labels go; what the plan's circuits point to if nobody said. */
    public LabelRegion region(Plan plan) {
        return settings.get(REGION).flatMap(PrepBoard::region).orElseGet(() -> LabelRegion.of(plan.kit()).get(0));
    }

    private static Optional<LabelRegion> region(String name) {
        return Arrays.stream(LabelRegion.values()).filter(r -> r.name().equals(name)).findFirst();
    }

    /** Chooses it for the whole board. */
    public void choose(LabelRegion region) {
        settings.put(REGION, region.name());
        boards.atHand().forEach(ClassBoard::nudge);
    }

    public synchronized Ticked ticked(String classId) {
        return classes.getOrDefault(classId, Ticked.NOTHING);
    }

    /**
     * Ticks something off, or takes the tick away, durably.
     *
     * @param done whether it is ticked off from now on
     * @param by   "instructor", or a helper's initials, which may be empty
     * @return everything that is ticked off then
     */
    public Ticked set(String classId, String item, boolean done, String by) {
        Ticked after = changed(classId, item, done, by);
        boards.find(classId).ifPresent(ClassBoard::nudge);
        return after;
    }

    private synchronized Ticked changed(String classId, String item, boolean done, String by) {
        Ticked before = ticked(classId);
        if (before.of(item).isPresent() == done) {
            return before;
        }
        Map<String, Tick> ticks = new LinkedHashMap<>(before.ticks());
        if (done) {
            Tick tick = new Tick(item, by, clock.instant().truncatedTo(ChronoUnit.MILLIS));
            store.tick(classId, tick);
            ticks.put(item, tick);
        } else {
            store.untick(classId, item);
            ticks.remove(item);
        }
        Ticked after = new Ticked(++revision, ticks);
        classes.put(classId, after);
        return after;
    }

    @Override public void close() {
        odds.close();
    }
}
