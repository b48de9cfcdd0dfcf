package benchpace.shelf;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pickup shelf: every candle that was ever put there, folded from the events. Immutable. */
public final class Shelf {
    private static final Shelf EMPTY = new Shelf(new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), 0);

    private final TreeMap<EntryId, ShelfEntry> entries;
    private final TreeMap<EntryId, TakenBack> takenBack;
    /** Where candles may stand of which something cannot be read. */
    private final TreeMap<EntryId, ShelfPlace> withheld;
    private final long lastId;

    /** A candle that was taken back, and when. */
    record TakenBack(ShelfEntry entry, Instant at) { }

    private Shelf(TreeMap<EntryId, ShelfEntry> entries, TreeMap<EntryId, TakenBack> takenBack,
                  TreeMap<EntryId, ShelfPlace> withheld, long lastId) {
        this.entries = entries;
        this.takenBack = takenBack;
        this.withheld = withheld;
        this.lastId = lastId;
    }

    static Shelf empty() {
        return EMPTY;
    }

    public static Shelf of(Collection<ShelfEvent> events) {
        Shelf shelf = EMPTY.copy(events.stream().mapToLong(e -> e.entry().value()).max().orElse(0));
        events.forEach(shelf::fold);
        return shelf;
    }

    /** The shelf after one more event. */
    public Shelf after(ShelfEvent event) {
        Shelf next = copy(Math.max(lastId, event.entry().value()));
        next.fold(event);
        return next;
    }

    private Shelf copy(long highestId) {
        return new Shelf(new TreeMap<>(entries), new TreeMap<>(takenBack), new TreeMap<>(withheld), highestId);
    }

    /** Of a shelf in the making only. */
    private void fold(ShelfEvent event) {
        withhold(event);
        if (event instanceof ShelfEvent.Placed e) {
            entries.put(e.entry(), new ShelfEntry(e.entry(), e.classId(), e.seat(), e.place(), e.readyFrom(),
                    e.collectBy(), e.claim(), e.name(), e.at(), ShelfEntry.NOT_YET));
        } else if (event instanceof ShelfEvent.Collected e) {
            entries.computeIfPresent(e.entry(), (id, old) -> old.collectedAt(e.at()));
        } else if (event instanceof ShelfEvent.CollectionUndone e) {
            entries.computeIfPresent(e.entry(), (id, old) -> old.collectedAt(ShelfEntry.NOT_YET).at(e.place()));
        } else if (event instanceof ShelfEvent.Moved e) {
            entries.computeIfPresent(e.entry(), (id, old) -> old.at(e.to()));
        } else if (event instanceof ShelfEvent.TakenBack e) {
            Optional.ofNullable(entries.remove(e.entry()))
                    .ifPresent(old -> takenBack.put(e.entry(), new TakenBack(old, e.at())));
        } else if (event instanceof ShelfEvent.PutBack e) {
            Optional.ofNullable(takenBack.remove(e.entry()))
                    .ifPresent(old -> entries.put(e.entry(), old.entry().at(e.place())));
        } else if (event instanceof ShelfEvent.Erased e) {
            takenBack.computeIfPresent(e.entry(), (id, old) -> new TakenBack(old.entry().withoutWords(), old.at()));
            entries.computeIfPresent(e.entry(), (id, old) -> old.withoutWords());
        }
    }

    /** What is known of where a candle stands of which something cannot be read; a readable event may tell it anew. */
    private void withhold(ShelfEvent event) {
        EntryId id = event.entry();
        if (event instanceof ShelfEvent.Unreadable e) {
            e.place().ifPresent(place -> withheld.put(id, place));
        } else if (entries.containsKey(id) || event instanceof ShelfEvent.Collected
                || event instanceof ShelfEvent.TakenBack) {
            withheld.remove(id);
        } else if (event instanceof ShelfEvent.Moved e) {
            withheld.put(id, e.to());
        } else if (event instanceof ShelfEvent.CollectionUndone e) {
            withheld.put(id, e.place());
        } else if (event instanceof ShelfEvent.PutBack e && !takenBack.containsKey(id)) {
            withheld.put(id, e.place());
        }
    }

    /** All candles, collected ones too, oldest first. */
    public List<ShelfEntry> entries() {
        return List.copyOf(entries.values());
    }

    /** The candles that stand there, oldest first. */
    public Stream<ShelfEntry> standing() {
        return entries.values().stream().filter(e -> !e.collected());
    }

    public Optional<ShelfEntry> entry(EntryId id) {
        return Optional.ofNullable(entries.get(id));
    }

    /** The candles that were taken back, by number. */
    Map<EntryId, TakenBack> takenBack() {
        return Collections.unmodifiableMap(takenBack);
    }

    Optional<ShelfEntry> standingAt(ShelfPlace place) {
        return standing().filter(e -> e.place().equals(place)).findFirst();
    }

    /** Whether a candle may stand there of which something cannot be read: look before putting another there. */
    boolean withholds(ShelfPlace place) {
        return withheld.containsValue(place);
    }

    /** The number the next candle gets; none is given twice, even if a candle was taken back. */
    public EntryId nextId() {
        return new EntryId(lastId + 1);
    }

    /** The claim words that a new one must differ from: all not yet erased, as collecting may be undone. */
    public Set<ClaimWord> takenWords() {
        return Stream.concat(entries.values().stream(), takenBack.values().stream().map(TakenBack::entry))
                .flatMap(e -> e.claimWord().stream()).collect(Collectors.toSet());
    }

    /** Free places, those on a shelf where candles of this class already stand first, else in the layout's order. */
    public List<ShelfPlace> suggest(ShelfLayout layout, String classId, int most) {
        Set<ShelfPlace> taken = standing().map(ShelfEntry::place).collect(Collectors.toSet());
        Set<String> ours = standing().filter(e -> e.classId().equals(classId)).map(e -> e.place().shelf())
                .collect(Collectors.toSet());
        return layout.places().filter(p -> !taken.contains(p) && !withholds(p))
                .sorted(Comparator.comparing((ShelfPlace p) -> !ours.contains(p.shelf()))).limit(most).toList();
    }

    /**
     * What the counter types: a claim word or the start of one, its number, a place ("window 3") or part of a name.
     * Candles that stand there first, then collected ones, newest first.
     */
    public List<ShelfEntry> search(String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return List.of();
        }
        Optional<ClaimWord> exact = ClaimWord.read(wanted);
        return entries.values().stream().filter(e -> matches(e, wanted, exact))
                .sorted(Comparator.comparing(ShelfEntry::collected)
                        .thenComparing(ShelfEntry::leftAt, Comparator.reverseOrder())
                        .thenComparing(ShelfEntry::id)).toList();
    }

    private static boolean matches(ShelfEntry entry, String wanted, Optional<ClaimWord> exact) {
        Optional<ClaimWord> word = entry.claimWord();
        return exact.isPresent() && word.equals(exact)
                || word.isPresent() && word.get().toString().startsWith(wanted)
                || word.isPresent() && wanted.equals(Integer.toString(word.get().number()))
                || entry.place().toString().toLowerCase(Locale.ROOT).equals(wanted)
                || entry.name().toLowerCase(Locale.ROOT).contains(wanted);
    }

    /** Whom to remind: overdue candles, and ready ones to be collected within {@code ahead}; most urgent first. */
    public List<ShelfEntry> reminders(Instant now, Duration ahead) {
        return standing().filter(e -> e.status(now) == ShelfStatus.OVERDUE
                        || e.status(now) == ShelfStatus.READY && !e.collectBy().isAfter(now.plus(ahead)))
                .sorted(Comparator.comparing(ShelfEntry::collectBy).thenComparing(ShelfEntry::id)).toList();
    }
}
