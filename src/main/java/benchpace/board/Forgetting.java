package benchpace.board;

import benchpace.board.time.BoardTime;
import benchpace.board.view.NamesDue;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.store.Forgotten;
import benchpace.store.Settings;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * Forgets the guests of classes: of one when somebody asks for it, and of all some days after they were over where the
 * organiser wants that. It is never guessed: until somebody chooses the days all names are kept, for a studio may have
 * to know who was there, and what is forgotten does not come back.
 */
public final class Forgetting {
    /** Proposed to whoever has not chosen: long enough for a candle to be fetched and a complaint to come in. */
    public static final int PROPOSED_DAYS = 30;
    /** Ten years. */
    public static final int MOST_DAYS = 3650;
    private static final Logger LOG = System.getLogger(Forgetting.class.getName());
    private static final String KEY = "guests.forget-after-days";

    private final Boards boards;
    private final ShelfBoard shelf;
    private final Settings settings;
    private final Sweeping sweeping;
    private final Backups backups;
    private final BoardTime clock;

    /** What became of the guests of one class. */
    public sealed interface Outcome {
        /**
         * They are forgotten.
         *
         * @param swept   whether copies in unused parts of the file are gone, too; if not that follows by itself
         * @param candles how many of its candles stand on the shelf, each with the word and name that it is given for
         */
        record Done(Instant at, boolean swept, int candles) implements Outcome { }

        /** The class is not over. */
        record NotOver() implements Outcome { }
    }

    public Forgetting(Boards boards, ShelfBoard shelf, Settings settings, Sweeping sweeping, Backups backups,
                      InstantSource clock) {
        this.boards = boards;
        this.shelf = shelf;
        this.settings = settings;
        this.sweeping = sweeping;
        this.backups = backups;
        this.clock = BoardTime.of(clock);
    }

    /** How many days after their class guests are forgotten; empty if they are kept. */
    public OptionalInt days() {
        Optional<String> kept = settings.get(KEY).filter(text -> text.matches("[1-9]\\d{0,3}"));
        return kept.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(kept.get()));
    }

    /** @param days 1 to {@link #MOST_DAYS}, or empty to keep them; whose time is over then goes with the next round */
    public void days(OptionalInt days) {
        if (days.isPresent()) {
            settings.put(KEY, Integer.toString(days.getAsInt()));
        } else {
            settings.remove(KEY);
        }
    }

    /** What a number of days would come to. */
    public NamesDue.Outlook outlook(int days) {
        Instant now = clock.instant();
        List<NamesDue> all = due(boards.all(), days);
        return new NamesDue.Outlook(all.stream().filter(due -> !due.at().isAfter(now)).toList(),
                all.stream().filter(due -> due.at().isAfter(now)).toList());
    }

    private static List<NamesDue> due(Collection<ClassBoard> of, int days) {
        return of.stream().filter(board -> board.forgotten().isEmpty())
                .flatMap(board -> overSince(board).map(over -> new NamesDue(board.id(), board.live().name(),
                        over.plus(Duration.ofDays(days)))).stream())
                .sorted(Comparator.comparing(NamesDue::at).thenComparing(NamesDue::classId)).toList();
    }

    private static Optional<Instant> overSince(ClassBoard board) {
        return Guests.overSince(board.live(), board.now());
    }

    /** How many classes have forgotten guests. */
    public int forgotten() {
        return (int) boards.all().stream().filter(board -> board.forgotten().isPresent()).count();
    }

    /** Whether the guests of a class can be forgotten: it is over. */
    public boolean isOver(ClassBoard board) {
        return overSince(board).isPresent();
    }

    /** Whether anything is there to forget: a name, a note, or a word of a candle that has left the shelf. */
    public boolean hasWords(ClassBoard board) {
        List<Recorded> log = board.live().log();
        Instant now = clock.instant();
        return !Nameless.ofGuests().all(log).equals(log) || !shelf.arrangement().rules()
                .erasuresOf(shelf.shelf(), Map.of(board.id(), now), now).isEmpty();
    }

    /** When the guests of a class go by themselves; empty if they do not, or the class is not over. */
    public Optional<Instant> due(ClassBoard board) {
        OptionalInt days = days();
        return days.isEmpty() || board.forgotten().isPresent() ? Optional.empty()
                : overSince(board).map(at -> at.plus(Duration.ofDays(days.getAsInt())));
    }

    /** Its candles that wait on the shelf. */
    public int waiting(String classId) {
        return (int) shelf.shelf().standing().filter(entry -> entry.classId().equals(classId)).count();
    }

    /** How long words of candles are kept after they were handed out. */
    public Duration shelfKeeps() {
        return shelf.arrangement().settings().eraseAfter();
    }

    /**
     * Forgets the guests of a class because somebody asks for it; asked again it does what may have been left.
     *
     * @throws ClassDeleted if somebody deleted it meanwhile
     */
    public Outcome forget(ClassBoard board) {
        if (!forget(board, false)) {
            return new Outcome.NotOver();
        }
        return new Outcome.Done(board.forgotten().map(Forgotten::at).orElseThrow(), swept(), waiting(board.id()));
    }

    /** Where the disk has no room for it, it is owed and told elsewhere. */
    private boolean swept() {
        try {
            return sweeping.sweep();
        } catch (StoreException e) {
            LOG.log(Level.WARNING, "what was erased cannot be cleared from the file yet; it is tried again", e);
            return false;
        }
    }

    private boolean forget(ClassBoard board, boolean byAge) {
        boolean done = boards.forgetGuests(board, byAge);
        if (done) {
            shelf.forgetGuests(board.id());
            backups.discard();
        }
        return done;
    }

    /**
     * Forgets the guests of classes that were over so many days ago; none while the clock is in doubt. What somebody
     * asked for is completed first, whatever kept it from that: the program ended, or the disk was full. What cannot be
     * done in one class keeps nothing from being done in the others.
     *
     * @throws StoreException if some of it cannot be done, once all else is
     */
    public void forgetDue() {
        List<Runnable> all = new ArrayList<>(List.of(this::complete, boards::completeUnreadable));
        OptionalInt days = days();
        if (days.isPresent() && clock.trusted()) {
            Duration kept = Duration.ofDays(days.getAsInt());
            Instant now = clock.instant();
            due(boards.withGuests(now.minus(kept)), days.getAsInt()).stream().filter(due -> !due.at().isAfter(now))
                    .forEach(due -> all.add(() -> boards.find(due.classId())
                            .filter(board -> !board.isDeleted()).ifPresent(board -> forget(board, true))));
            all.add(() -> forgetUnreadable(kept));
        }
        Optional<StoreException> failed = Optional.empty();
        for (Runnable one : all) {
            try {
                one.run();
            } catch (StoreException e) {
                failed.ifPresent(e::addSuppressed);
                failed = Optional.of(e);
            }
        }
        if (failed.isPresent()) {
            throw failed.get();
        }
    }

    private void forgetUnreadable(Duration kept) {
        if (boards.forgetUnreadableDue(kept, clock.instant())) {
            backups.discard();
            complete();
        }
    }

    /** A class and its candles are written one after the other: whose guests are forgotten has none of their words. */
    private void complete() {
        shelf.forgetGuests(boards.forgotten().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, one -> one.getValue().at())));
    }

    /** Whether words were erased of which a copy may be left in the file. */
    public boolean toSweep() {
        return sweeping.owed();
    }
}
