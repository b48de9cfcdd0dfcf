package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.ReadyWindow;
import benchpace.board.view.ClassView;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.wall.WallMain;
import benchpace.web.screen.wall.WallSeats;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What a thousand invented classes say of their candles' time, read off the wall, the table, the sheets and the phones
 * as people read them: one story, whoever tells it. The truth it is held against is the computed range alone.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OneStoryTest {
    private static final int CLASSES = 1_000;
    private static final Pattern RANGE = Pattern.compile("(\\d\\d:\\d\\d)(?: to |\u2013)(\\d\\d:\\d\\d)");
    private static final Pattern HEADER = Pattern.compile(
            "from about (\\d\\d:\\d\\d)(?:, all by about (\\d\\d:\\d\\d))?|about (\\d\\d:\\d\\d) to (\\d\\d:\\d\\d)");
    private static final Pattern MINUTES = Pattern.compile("(?:(\\d+) h ?)?(?:(\\d+) min)? ?left|"
            + "(?:try|tried) in (?:(\\d+) h)? ?(?:(\\d+) min)?");
    private static final Pattern READY = Pattern.compile("(?i)may be ready|try it|try them|any minute|soon|hand test\\b"
            + "(?! decides)|try by hand|will try it");
    private static final Pattern WAITS = Pattern.compile("(?i)min left|(try|tried) in|ready about|is setting|^setting");

    private record Said(Instant from, Instant until) { }

    /** All that one class says at one instant. */
    private record Story(SimulatedClass of, ClassView view, String header, String nowPanel, String calls,
                         List<WallSeats.Group> groups, List<String> rows,
                         Map<Integer, Map<String, String>> seats, Map<Integer, String> tileHtml,
                         boolean waits) {
        @Override public String toString() {
            return "class " + of.number() + " at " + new Times(Evening.ZONE).clock(of.now()) + ": " + header + " | "
                    + rows;
        }
    }

    private static List<Story> stories;

    @BeforeAll static void simulate() {
        Screens screens = new Screens();
        stories = LongStream.range(0, CLASSES).parallel().mapToObj(n -> story(SimulatedClass.of(n), screens)).toList();
    }

    private static Story story(SimulatedClass of, Screens screens) {
        ClassView view = of.view();
        Times times = new Times(Evening.ZONE);
        Viewer lead = new Viewer(Role.INSTRUCTOR, "");
        Map<String, String> wall = screens.fragments(ScreenKind.WALL, view, Viewer.GUEST);
        Map<String, String> table = screens.fragments(ScreenKind.INSTRUCTOR, view, lead);
        Map<String, String> wait = view.waiting().strips().isEmpty() ? Map.of()
                : screens.fragments(ScreenKind.WAIT, view, lead);
        String calls = wait.isEmpty() ? "" : wait.get("wait-calls") + table.get("wait") + wall.get("wall-wait");
        List<WallSeats.Group> groups = WallSeats.of(view, times).groups();
        List<String> rows = new ArrayList<>();
        for (String row : wall.get("wall-seats").split("(?=<div class=\"group\")")) {
            if (row.startsWith("<div class=\"group\"")) {
                rows.add(ReadAloud.at(of.now(), CandleWords.part(row, "<p class=\"group__clock\">", "</p>")));
            }
        }
        Map<Integer, Map<String, String>> seats = CandleWords.of(view, screens, lead);
        Map<Integer, String> tiles = new TreeMap<>();
        seats.keySet().forEach(n -> tiles.put(n, table.get("seat-" + n)));
        return new Story(of, view, ReadAloud.at(of.now(), wall.get("wall-main")),
                ReadAloud.at(of.now(), CandleWords.part(table.get("now"), "<p class=\"now__cure\">", "</p>")),
                ReadAloud.at(of.now(), calls), groups, rows, seats, tiles, WallMain.waits(view));
    }

    private static Instant instant(String clock) {
        LocalTime time = LocalTime.parse(clock);
        Instant at = Evening.START.atZone(Evening.ZONE).with(time).toInstant();
        return at.isBefore(Evening.START) ? at.plus(Duration.ofDays(1)) : at;
    }

    private static Optional<Said> range(String words) {
        Matcher range = RANGE.matcher(words);
        return range.find() ? Optional.of(new Said(instant(range.group(1)), instant(range.group(2))))
                : Optional.empty();
    }

    /** What the sheet says of a candle that no hand has decided on. */
    private static Optional<Said> said(Story story, int seat) {
        return range(story.seats().get(seat).get("sheet"));
    }

    private static boolean settled(Story story, int seat) {
        CandleClock clock = story.view().seat(seat).candle().orElseThrow();
        return clock.judgedSetAt().isPresent() || story.view().steps().stream()
                .filter(s -> s.kind() == benchpace.plan.StepKind.FINISH)
                .anyMatch(s -> story.view().seat(seat).finished().contains(s.id()));
    }

    private static List<Integer> waiting(Story story) {
        return story.seats().keySet().stream().filter(n -> !settled(story, n)).toList();
    }

    // ---- the invariants

    @Test void there_is_something_to_hold_against_each_other() {
        assertThat(stories.stream().mapToLong(s -> waiting(s).size()).sum()).isGreaterThan(5_000);
        assertThat(stories.stream().mapToLong(s -> s.seats().size() - waiting(s).size()).sum()).isGreaterThan(500);
        assertThat(stories).filteredOn(s -> s.rows().size() > 1).hasSizeGreaterThan(50);
        assertThat(stories).filteredOn(s -> s.rows().stream().filter(r -> range(r).isPresent()).count() > 1)
                .hasSizeGreaterThan(30);
        assertThat(stories).filteredOn(s -> s.seats().values().stream().anyMatch(w -> w.containsKey("wall")))
                .hasSizeGreaterThan(300);
        assertThat(stories).filteredOn(s -> s.seats().values().stream().anyMatch(w -> w.containsKey("wait")))
                .hasSizeGreaterThan(10);
    }

    @Test void what_is_said_of_a_candle_covers_what_was_computed_and_little_more() {
        for (Story story : stories) {
            for (int seat : waiting(story)) {
                ReadyWindow computed = story.view().seat(seat).candle().orElseThrow().ready();
                assertThat(said(story, seat)).as("seat %d of %s", seat, story).hasValueSatisfying(said -> {
                    assertThat(said.from()).isAfter(computed.from().minus(Duration.ofMinutes(16)))
                            .isBeforeOrEqualTo(computed.from());
                    assertThat(said.until()).isBefore(computed.until().plus(Duration.ofMinutes(20)))
                            .isAfterOrEqualTo(computed.until());
                });
            }
        }
    }

    @Test void the_same_candle_has_the_same_range_on_every_screen() {
        for (Story story : stories) {
            for (int seat : waiting(story)) {
                Optional<Said> said = said(story, seat);
                story.seats().get(seat).forEach((screen, words) -> range(words).ifPresent(other ->
                        assertThat(Optional.of(other)).as("%s of seat %d of %s", screen, seat, story).isEqualTo(said)));
            }
        }
    }

    @Test void a_row_on_the_wall_says_of_its_seats_what_their_own_screens_say() {
        for (Story story : stories) {
            for (int i = 0; i < story.rows().size(); i++) {
                Optional<Said> row = range(story.rows().get(i));
                for (int seat : story.groups().get(i).seats()) {
                    if (row.isPresent() && story.seats().containsKey(seat)) {
                        assertThat(row).as("seat %d of %s", seat, story).isEqualTo(said(story, seat));
                    }
                }
            }
        }
    }

    @Test void rows_are_never_parted_by_rounding_alone() {
        Duration step = Duration.ofMinutes(5);
        for (Story story : stories) {
            List<Said> rows = story.rows().stream().flatMap(r -> range(r).stream()).toList();
            for (Said a : rows) {
                assertThat(rows).as("%s", story).filteredOn(b -> b != a)
                        .noneMatch(b -> Duration.between(a.from(), b.from()).abs().compareTo(step) <= 0
                                && Duration.between(a.until(), b.until()).abs().compareTo(step) <= 0);
            }
        }
    }

    @Test void what_is_said_of_all_candles_covers_what_is_said_of_each() {
        for (Story story : stories) {
            for (String words : List.of(story.waits() ? story.header() : "", story.nowPanel())) {
                Matcher all = HEADER.matcher(words);
                if (all.find()) {
                    String from = all.group(1) != null ? all.group(1) : all.group(3);
                    String until = all.group(1) != null ? all.group(2) : all.group(4);
                    for (int seat : waiting(story)) {
                        Said own = said(story, seat).orElseThrow();
                        assertThat(instant(from)).as("seat %d of %s: %s", seat, story, words)
                                .isBeforeOrEqualTo(own.from());
                        if (until != null) {
                            assertThat(instant(until)).as("seat %d of %s: %s", seat, story, words)
                                    .isAfterOrEqualTo(own.until());
                        }
                    }
                }
            }
        }
    }

    @Test void every_countdown_counts_to_the_beginning_of_a_range_that_is_said_beside_it() {
        for (Story story : stories) {
            Optional<Instant> first = waiting(story).stream().map(n -> said(story, n).orElseThrow().from())
                    .min(Instant::compareTo);
            for (String words : List.of(story.waits() ? story.header() : "", story.nowPanel())) {
                counted(words).ifPresent(minutes -> assertThat(minutes).as("%s: %s", story, words)
                        .isEqualTo(minutesTo(story, first.orElseThrow())));
            }
            for (int seat : waiting(story)) {
                Instant from = said(story, seat).orElseThrow().from();
                story.seats().get(seat).forEach((screen, words) -> counted(words).ifPresent(minutes ->
                        assertThat(minutes).as("%s of seat %d of %s: %s", screen, seat, story, words)
                                .isEqualTo(minutesTo(story, from))));
            }
        }
    }

    @Test void a_call_for_the_first_candles_names_the_beginning_of_the_first_range() {
        Pattern first = Pattern.compile("First candles ready (?:from )?about (\\d\\d:\\d\\d)");
        int called = 0;
        for (Story story : stories) {
            Matcher call = first.matcher(story.calls());
            while (call.find()) {
                called++;
                Instant from = waiting(story).stream().map(n -> said(story, n).orElseThrow().from())
                        .min(Instant::compareTo).orElseThrow();
                assertThat(instant(call.group(1))).as("%s: %s", story, story.calls()).isEqualTo(from);
            }
        }
        assertThat(called).isPositive();
    }

    private static long minutesTo(Story story, Instant at) {
        return (Duration.between(story.of().now(), at).toSeconds() + 59) / 60;
    }

    private static Optional<Long> counted(String words) {
        Matcher minutes = MINUTES.matcher(words);
        if (!minutes.find()) {
            return Optional.empty();
        }
        long sum = 0;
        for (int i = 1; i <= 4; i++) {
            sum += minutes.group(i) == null ? 0 : Long.parseLong(minutes.group(i)) * (i % 2 == 1 ? 60 : 1);
        }
        return Optional.of(sum);
    }

    @Test void nothing_ready_lies_in_the_future() {
        for (Story story : stories) {
            for (int seat : waiting(story)) {
                if (story.of().now().isBefore(said(story, seat).orElseThrow().from())) {
                    story.seats().get(seat).forEach((screen, words) -> assertThat(words)
                            .as("%s of seat %d of %s", screen, seat, story).doesNotContainPattern(READY));
                }
            }
            for (String row : story.rows()) {
                range(row).filter(r -> story.of().now().isBefore(r.from())).ifPresent(r ->
                        assertThat(row).as("%s", story).doesNotContainPattern(READY));
            }
            boolean none = waiting(story).stream()
                    .allMatch(n -> story.of().now().isBefore(said(story, n).orElseThrow().from()));
            if (none && story.waits()) {
                assertThat(story.header()).as("%s", story).doesNotContainPattern(
                        "(?i)may be ready|any minute|try them|Time for the hand test");
            }
        }
    }

    @Test void nothing_in_a_ranges_past_is_still_left_and_inside_it_no_minutes_are_told() {
        for (Story story : stories) {
            for (int seat : waiting(story)) {
                Said said = said(story, seat).orElseThrow();
                boolean begun = !story.of().now().isBefore(said.from());
                boolean past = !story.of().now().isBefore(said.until());
                story.seats().get(seat).forEach((screen, words) -> {
                    if (begun) {
                        assertThat(counted(words)).as("%s of seat %d of %s: %s", screen, seat, story, words).isEmpty();
                    }
                    if (past && !screen.equals("wait")) {
                        assertThat(words.replace("was to be ready about", "")).as("%s of seat %d of %s", screen, seat,
                                story).doesNotContainPattern(WAITS);
                    }
                });
            }
        }
    }

    @Test void once_a_hand_has_decided_no_forecast_of_the_candle_is_told() {
        for (Story story : stories) {
            for (int seat : story.seats().keySet()) {
                if (settled(story, seat)) {
                    story.seats().get(seat).forEach((screen, words) -> {
                        assertThat(range(words)).as("%s of seat %d of %s: %s", screen, seat, story, words).isEmpty();
                        assertThat(words).as("%s of seat %d of %s", screen, seat, story).doesNotContain("ready about");
                        assertThat(counted(words)).as("%s of seat %d of %s", screen, seat, story).isEmpty();
                    });
                }
            }
        }
    }

    @Test void no_single_tap_on_a_tile_says_that_a_candle_was_tried_before_its_range() {
        int asking = 0;
        for (Story story : stories) {
            for (int seat : waiting(story)) {
                String tile = story.tileHtml().get(seat);
                boolean before = story.of().now().isBefore(said(story, seat).orElseThrow().from());
                boolean asks = tile.contains("data-tried-from=\"20");
                boolean finishes = tile.contains("data-can-finish=\"true\"") && tile.contains("data-step=\"trim\"");
                asking += asks ? 1 : 0;
                assertThat(finishes && !asks).as("seat %d of %s", seat, story).isEqualTo(finishes && !before);
            }
        }
        assertThat(asking).isGreaterThan(50);
    }
}
