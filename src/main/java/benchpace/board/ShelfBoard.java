package benchpace.board;

import benchpace.board.time.BoardTime;
import benchpace.live.Command;
import benchpace.plan.SeatNumber;
import benchpace.shelf.EntryId;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfArrangement;
import benchpace.shelf.ShelfDecision;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfRefusal;
import benchpace.shelf.ShelfRules;
import benchpace.store.Settings;
import benchpace.store.ShelfArrangements;
import benchpace.store.ShelfLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The pickup shelf of the shop, across all classes: the only place where its rules, its log and the time meet. One
 * writer: two devices that want one place pass here one after the other, and the second is refused.
 */
public final class ShelfBoard {
    private static final Logger LOG = System.getLogger(ShelfBoard.class.getName());

    private final ShelfLog log;
    private final ShelfArrangements arrangements;
    private final BoardTime clock;
    private final List<String> degraded = new ArrayList<>();
    private volatile Shelf shelf;
    private volatile ShelfArrangement arrangement;

    /** What became of a wish. */
    public sealed interface Outcome {
        /** @param entry the candle as it is now; empty once it was taken back */
        record Done(EntryId id, Optional<ShelfEntry> entry, boolean duplicate) implements Outcome { }

        record Refused(ShelfRefusal why) implements Outcome { }
    }

    /** What somebody wishes, decided with the shelf as it is when its turn comes. */
    public interface Wish {
        ShelfDecision decide(ShelfRules rules, Shelf shelf, Instant now);
    }

    /** Opens the shelf as the log left it. */
    ShelfBoard(ShelfLog log, ShelfArrangements arrangements, InstantSource clock) {
        this.log = log;
        this.arrangements = arrangements;
        this.clock = BoardTime.of(clock);
        ShelfLog.Content content = log.read();
        content.unreadable().forEach(fault -> degraded.add(told(fault)));
        this.arrangement = arranged();
        this.shelf = Shelf.of(content.events());
    }

    private ShelfArrangement arranged() {
        try {
            return arrangements.get();
        } catch (StoreException e) {
            degraded.add(told(e));
            return ShelfArrangement.STANDARD;
        }
    }

    /** The log says why, which may quote what a guest is called; others are told only what. */
    private static String told(StoreException fault) {
        LOG.log(Level.ERROR, fault.getMessage(), fault.getCause());
        return fault.getMessage();
    }

    /** The shelf that a data folder holds. */
    public static ShelfBoard open(Database database, InstantSource clock) {
        return new ShelfBoard(new ShelfLog(database), new ShelfArrangements(new Settings(database)), clock);
    }

    /** What could not be read back of the shelf at the start, a sentence each; the rest goes on without. */
    public List<String> degraded() {
        return List.copyOf(degraded);
    }

    public Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    public Shelf shelf() {
        return shelf;
    }

    public ShelfArrangement arrangement() {
        return arrangement;
    }

    /**
     * Arranges the shelf anew. Candles on places that are gone stay where they are until moved or collected; words that
     * are now to be erased sooner go at once.
     */
    public synchronized void arrange(ShelfArrangement wanted) {
        arrangements.put(wanted);
        arrangement = wanted;
        eraseDue();
    }

    /**
     * Decides and, if the rules agree, records durably before anyone can see it.
     *
     * @param commandId the same id counts once, however often it is sent; sent again for something else it is refused
     * @param same      whether what a command led to is what is wished for now
     * @param about     finds the candle that a wish is about which holds already
     */
    public synchronized Outcome submit(String commandId, Predicate<ShelfEvent> same,
                                       Function<Shelf, Optional<EntryId>> about, Wish wish) {
        Optional<ShelfEvent> known = log.eventOf(commandId);
        if (known.isPresent()) {
            EntryId entry = known.get().entry();
            return same.test(known.get()) ? new Outcome.Done(entry, shelf.entry(entry), true)
                    : new Outcome.Refused(new ShelfRefusal.IdTaken(entry));
        }
        ShelfDecision decision = wish.decide(arrangement.rules(), shelf, now());
        if (decision instanceof ShelfDecision.Refused refused) {
            return new Outcome.Refused(refused.why());
        }
        List<ShelfEvent> events = ((ShelfDecision.Accepted) decision).events();
        if (events.isEmpty()) {
            EntryId id = about.apply(shelf).orElseThrow(
                    () -> new IllegalArgumentException("a wish that holds already has its candle"));
            return new Outcome.Done(id, shelf.entry(id), true);
        }
        record(commandId, events);
        EntryId id = events.get(0).entry();
        return new Outcome.Done(id, shelf.entry(id), false);
    }

    /** The candle of a seat that stands on the shelf, if one does. */
    Optional<ShelfEntry> standing(String classId, SeatNumber seat) {
        return shelf.standing().filter(e -> e.classId().equals(classId) && e.seat().equals(seat)).findFirst();
    }

    /**
     * The guest of a seat stayed or came back: its candle does not stand on the shelf any more.
     *
     * @param at when that was; a candle put there later is left alone
     * @return if it did
     */
    boolean guestIsBack(String commandId, String classId, SeatNumber seat, Instant at) {
        Optional<EntryId> id = standing(classId, seat).filter(e -> !e.leftAt().isAfter(at)).map(ShelfEntry::id);
        return id.isPresent() && submit(commandId, e -> true, s -> id,
                (rules, s, now) -> rules.takeBack(s, id.get(), now))
                instanceof Outcome.Done;
    }

    /**
     * The guest of a seat was not back after all: the candle that a command took back stands there again.
     *
     * @param takenBackBy the command id given to {@link #guestIsBack}
     * @return whether it stands there
     */
    boolean guestIsGone(String commandId, String takenBackBy) {
        Optional<EntryId> id = log.eventOf(takenBackBy).map(ShelfEvent::entry);
        return id.isPresent() && submit(commandId, e -> true, s -> id,
                (rules, s, now) -> rules.putBack(s, id.get(), now))
                instanceof Outcome.Done done && done.entry().isPresent();
    }

    /** Adds up before writing down: what cannot be added up is never durable. */
    private void record(String commandId, List<ShelfEvent> events) {
        Shelf next = shelf;
        for (ShelfEvent event : events) {
            next = next.after(event);
        }
        log.append(commandId, events);
        shelf = next;
    }

    /** Erases the words of a class's candles that are handed out or taken back; those that wait there keep theirs. */
    synchronized void forgetGuests(String classId) {
        forgetGuests(Map.of(classId, now()));
    }

    /** The same of candles that had left the shelf when the guests of their class were forgotten. */
    synchronized void forgetGuests(Map<String, Instant> forgotten) {
        Instant now = now();
        List<ShelfEvent> words = arrangement.rules().erasuresOf(shelf, forgotten, now);
        if (!words.isEmpty()) {
            record(Command.own("forget.") + words.get(0).entry() + "-" + now.toEpochMilli(), words);
        }
    }

    /**
     * Erases the names and words of candles that were collected or taken back long enough ago; none while the clock is
     * in doubt.
     */
    public synchronized void eraseDue() {
        if (!clock.trusted()) {
            return;
        }
        Instant now = now();
        List<ShelfEvent> due = arrangement.rules().erasuresDue(shelf, now);
        if (due.isEmpty()) {
            log.emptyWhatIsOwed();
        } else {
            record(Command.own("erase.") + due.get(0).entry() + "-" + now.toEpochMilli(), due);
        }
    }
}
