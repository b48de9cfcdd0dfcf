package benchpace.web.screen.shelf;

import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfArrangement;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfLayout;
import benchpace.shelf.ShelfPlace;
import benchpace.shelf.ShelfStatus;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The pickup shelf, across all classes.
 *
 * @param typed    what is searched for; empty if nothing is
 * @param sections the found candles, or all by how they stand
 * @param free     free places, for moving
 * @param reminders whom to remind, most urgent first, in a line each
 */
public record ShelfPage(Shell shell, boolean instructor, String typed, String summary, List<Section> sections,
                        List<Place> free, List<String> reminders, Arrangement arrangement) {
    private static final int COLLECTED = 20;

    /** Candles that stand alike. @param more how many further ones are not listed */
    public record Section(String id, String heading, List<Row> rows, int more) { }

    /**
     * One candle.
     *
     * @param claim  empty once it was erased
     * @param when   what matters of its times, in words
     * @param status {@code setting}, {@code ready}, {@code overdue} or {@code collected}
     */
    public record Row(long id, String claim, String name, String from, String place, String when, String status,
                      boolean collected, boolean undoable) { }

    /** A place as the forms send it. */
    public record Place(String shelf, int number) {
        public String words() {
            return shelf + " " + number;
        }
    }

    /** The settings in the units of the form. @param shelves one a line, "Upper 12" */
    public record Arrangement(String shelves, long marginMinutes, long collectDays, long eraseDays) {
        static Arrangement of(ShelfArrangement arrangement) {
            StringBuilder lines = new StringBuilder();
            for (ShelfLayout.Board board : arrangement.layout().boards()) {
                lines.append(board.name()).append(' ').append(board.places()).append('\n');
            }
            return new Arrangement(lines.toString().strip(), arrangement.settings().readyMargin().toMinutes(),
                    arrangement.settings().collectWithin().toDays(), arrangement.settings().eraseAfter().toDays());
        }
    }

    /** What a page of the shelf is made from. @param className names a class by its id */
    public record Given(Shelf shelf, ShelfArrangement arrangement, Instant now, Duration remindAhead,
                        UnaryOperator<String> className) { }

    public static ShelfPage of(Given given, String typed, Viewer viewer, Times times) {
        Shelf shelf = given.shelf();
        List<Section> sections = typed.isEmpty() ? sections(given, times)
                : List.of(section("found", "Found", shelf.search(typed).stream(), 40, given, times));
        long standing = shelf.standing().count();
        long places = given.arrangement().layout().places().count();
        String summary = standing == 0 ? "The shelf is empty." : standing
                + " of " + places + (standing == 1 ? " places is taken." : " places are taken.");
        List<String> reminders = shelf.reminders(given.now(), given.remindAhead()).stream()
                .map(e -> reminder(e, given, times)).toList();
        Shell shell = new Shell("Pickup shelf", "shelf", List.of(), "", "", times.zone().getId(), viewer.role().token(),
                viewer.initials());
        return new ShelfPage(shell, viewer.instructor(), typed, summary, sections,
                shelf.suggest(given.arrangement().layout(), "", 200).stream().map(ShelfPage::place).toList(), reminders,
                Arrangement.of(given.arrangement()));
    }

    static Place place(ShelfPlace place) {
        return new Place(place.shelf(), place.number());
    }

    private static List<Section> sections(Given given, Times times) {
        Comparator<ShelfEntry> urgent = Comparator.comparing(ShelfEntry::collectBy).thenComparing(ShelfEntry::id);
        return List.of(
                section("overdue", "Overdue", given, ShelfStatus.OVERDUE, urgent, times),
                section("ready", "Ready", given, ShelfStatus.READY, urgent, times),
                section("setting", "Setting", given, ShelfStatus.SETTING,
                        Comparator.comparing(ShelfEntry::readyFrom).thenComparing(ShelfEntry::id), times),
                section("collected", "Collected", given, ShelfStatus.COLLECTED,
                        Comparator.comparing(ShelfEntry::collectedAt).reversed().thenComparing(ShelfEntry::id), times));
    }

    private static Section section(String id, String heading, Given given, ShelfStatus status,
                                   Comparator<ShelfEntry> order, Times times) {
        Stream<ShelfEntry> entries = given.shelf().entries().stream().filter(e -> e.status(given.now()) == status)
                .sorted(order);
        int most = status == ShelfStatus.COLLECTED ? COLLECTED : Integer.MAX_VALUE;
        return section(id, heading, entries, most, given, times);
    }

    private static Section section(String id, String heading, Stream<ShelfEntry> entries, int most, Given given,
                                   Times times) {
        List<ShelfEntry> all = entries.toList();
        return new Section(id, heading, all.stream().limit(most).map(e -> row(e, given, times)).toList(),
                Math.max(0, all.size() - most));
    }

    private static Row row(ShelfEntry e, Given given, Times times) {
        ShelfStatus status = e.status(given.now());
        String when = switch (status) {
            case SETTING -> "Ready from about " + times.day(e.readyFrom()) + ".";
            case READY -> "Collect by " + times.date(e.collectBy()) + ".";
            case OVERDUE -> "Was to be collected by " + times.date(e.collectBy()) + ".";
            case COLLECTED -> "Collected " + times.day(e.collectedAt()) + ".";
        };
        return new Row(e.id().value(), e.claimWord().map(Object::toString).orElse(""), e.name(),
                given.className().apply(e.classId()) + ", seat " + e.seat(), e.place().toString(), when,
                status.name().toLowerCase(java.util.Locale.ROOT), e.collected(), e.collected() && !e.erased());
    }

    private static String reminder(ShelfEntry e, Given given, Times times) {
        String who = e.name().isEmpty() ? e.claim().toString() : e.name() + " (" + e.claim() + ")";
        return who + ", " + e.place() + ": " + (e.status(given.now()) == ShelfStatus.OVERDUE ? "was due " : "by ")
                + times.date(e.collectBy()) + ", " + given.className().apply(e.classId()) + ", seat " + e.seat() + ".";
    }
}
