package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.live.ClassEvent;
import benchpace.plan.ActivityId;
import benchpace.web.screen.devices.DevicesPage;
import benchpace.web.screen.shell.Message;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.StartView;
import benchpace.web.screen.wall.WallMain;
import benchpace.web.screen.wall.WallSeats;
import benchpace.words.Times;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the rendered pages must hold to in every situation. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScreensTest {
    private static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "", Evening.TABLET);
    private static final Viewer HELPER = new Viewer(Role.HELPER, "MO");
    /** Made once: views never change. */
    private static final Map<String, ClassView> EVENINGS = Evenings.all();
    private static final Pattern STYLE = Pattern.compile("<style|<[^>]*\\sstyle\\s*=", Pattern.CASE_INSENSITIVE);
    private static final Pattern HANDLER = Pattern.compile("<[^>]*\\son[a-z]+\\s*=|javascript:",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SCRIPT = Pattern.compile("<script([^>]*)>(.*?)</script>", Pattern.DOTALL);

    private static final StartView.Joining NO_LINK = new StartView.Joining(
            new StartView.Link("/helper", new boolean[0][]), "246801");

    private final Screens screens = new Screens();

    private List<String> everyPage() {
        List<String> pages = new ArrayList<>();
        EVENINGS.values().forEach(view -> {
            for (ScreenKind kind : ScreenKind.values()) {
                pages.add(screens.page(kind, view, kind == ScreenKind.WALL ? Viewer.GUEST : LEAD));
            }
            view.seats().forEach(seat -> pages.add(screens.sheet(view, seat.seat(), LEAD)));
        });
        pages.add(screens.start(new StartView(Optional.of(Role.INSTRUCTOR), "", List.of(), List.of(),
                new StartView.Link("/", new boolean[0][]), Optional.empty(), Optional.empty(), "", "")));
        Evenings.closing().values().forEach(view -> pages.add(screens.page(ScreenKind.INSTRUCTOR, view, LEAD)));
        pages.add(screens.devices(new DevicesPage(ScreenGallery.devices(false).rows(), NO_LINK, NO_LINK, true)));
        pages.add(screens.message(new Message("Not here", "No.", "/", "Back")));
        return pages;
    }

    @Test void no_page_needs_a_policy_that_allows_inline_scripts_or_styles() {
        for (String page : everyPage()) {
            String markup = page.replaceAll("=\"[^\"]*\"", "=\"\"");
            assertThat(STYLE.matcher(markup).find()).isFalse();
            assertThat(HANDLER.matcher(markup).find()).isFalse();
            Matcher script = SCRIPT.matcher(page);
            while (script.find()) {
                assertThat(script.group(1)).contains("src=\"/");
                assertThat(script.group(2)).isEmpty();
            }
        }
    }

    /** Cut to whole seconds, the first tap on a page bore a time before its class was set up, and was refused. */
    @Test void a_page_is_told_the_boards_time_to_the_millisecond() {
        Instant now = Evening.START.plusMillis(61_337);
        ClassView view = new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), Evening.ZONE)
                .view("evening", Evening.of("table-of-six", 6).open(0, "hello").live(), now);

        for (ScreenKind kind : ScreenKind.values()) {
            assertThat(screens.page(kind, view, LEAD)).contains("data-now=\"2027-03-04T18:01:01.337Z\"");
        }
    }

    @Test void no_page_names_another_host() {
        assertThat(everyPage()).noneMatch(page -> page.contains("http://") || page.contains("https://"));
    }

    @Test void the_wall_shows_no_name_in_any_situation() {
        for (Map.Entry<String, ClassView> evening : EVENINGS.entrySet()) {
            ClassView view = evening.getValue();
            String wall = screens.page(ScreenKind.WALL, view, Viewer.GUEST)
                    + screens.fragments(ScreenKind.WALL, view, Viewer.GUEST);
            view.seats().stream().filter(s -> !s.name().isEmpty()).forEach(s ->
                    assertThat(text(wall)).as(evening.getKey())
                            .doesNotContainPattern("\\b" + Pattern.quote(s.name()) + "\\b"));
        }
    }

    @Test void the_wall_is_the_same_whoever_of_the_table_is_behind() {
        ClassView four = Evening.of("table-of-six", 6).open(0, "hello").open(8, "wicks")
                .done(9, "wicks", 1, 2, 3, 5, 6).view(25);
        ClassView two = Evening.of("table-of-six", 6).open(0, "hello").open(8, "wicks")
                .done(9, "wicks", 1, 3, 4, 5, 6).view(25);

        assertThat(four.help()).isNotEmpty();
        assertThat(screens.page(ScreenKind.WALL, four, Viewer.GUEST))
                .isEqualTo(screens.page(ScreenKind.WALL, two, Viewer.GUEST))
                .doesNotContain("behind", "slipping");
    }

    @Test void a_name_is_text_and_never_markup() {
        ClassView odd = EVENINGS.get("odd-names");
        String page = screens.page(ScreenKind.INSTRUCTOR, odd, LEAD) + screens.sheet(odd, 1, LEAD)
                + screens.page(ScreenKind.HELPER, odd, HELPER);

        assertThat(page).doesNotContain("<script>alert").contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .contains("value=\"x&#34;>").contains("&amp;amp; ${1+1}");
    }

    @Test void the_parts_sent_later_are_those_of_the_page() {
        for (ClassView view : EVENINGS.values()) {
            for (ScreenKind kind : ScreenKind.values()) {
                String page = screens.page(kind, view, HELPER);
                screens.fragments(kind, view, HELPER).forEach((name, html) ->
                        assertThat(page).as(name).contains("sse-swap=\"" + name + "\">" + html + "</"));
            }
        }
    }

    @Test void mere_passing_of_time_changes_no_part_while_nobody_gets_behind() {
        Evening evening = Evening.of("evening-pour", 8).open(0, "welcome").done(7, "vessel", Evening.seats(1, 8))
                .open(9, "wicks").done(11, "wicks", 1, 2);

        for (ScreenKind kind : ScreenKind.values()) {
            Map<String, String> then = screens.fragments(kind, evening.view(12), LEAD);
            Map<String, String> later = screens.fragments(kind, evening.view(12.5), LEAD);
            // by their nature, and at most each half minute
            for (String moving : List.of("home", "lines", "next-ask")) {
                then.remove(moving);
                later.remove(moving);
            }
            assertThat(later).isEqualTo(then);
        }
    }

    @Test void every_state_that_speaks_says_its_word_and_draws_its_mark() {
        String tile = screens.fragments(ScreenKind.INSTRUCTOR, EVENINGS.get("wicks"), LEAD).get("seat-4");

        assertThat(tile).contains("face--behind", "<svg class=\"mark\"", "behind</span>", "MO");
        assertThat(text(tile)).containsIgnoringWhitespaces("7 min over");
    }

    @Test void a_countdown_of_the_plan_says_so_and_leaves_the_last_word_to_the_hand_test() {
        ClassView cure = EVENINGS.get("cure");

        assertThat(screens.page(ScreenKind.INSTRUCTOR, cure, LEAD)).contains("The plan's figure")
                .contains("hand test decides").contains("Ready about 20:30 to 20:50");
        assertThat(screens.page(ScreenKind.WALL, cure, Viewer.GUEST))
                .contains("plan's figure", "hand test decides");
        assertThat(everyPage()).noneMatch(page -> text(page).matches("(?s).*\\b(is|are) safe\\b.*"));
    }

    @Test void the_next_step_asks_before_it_leaves_somebody_behind_and_names_them() {
        Map<String, String> parts = screens.fragments(ScreenKind.INSTRUCTOR, EVENINGS.get("wicks"), LEAD);

        assertThat(parts.get("next")).contains("data-ask=\"next-dialog\"", "leaves seats 4, 7 and 8 behind");
        assertThat(parts.get("next-ask")).contains("data-seat=\"4\"", "data-seat=\"7\"", "data-command=\"pause\"");
        assertThat(screens.fragments(ScreenKind.INSTRUCTOR, EVENINGS.get("before"), LEAD).get("next"))
                .contains("data-ask=\"\"", "Begin: ");
    }

    @Test void a_helper_sees_no_button_of_the_instructor_on_the_sheet() {
        String sheet = screens.sheet(EVENINGS.get("wicks"), 4, HELPER);

        assertThat(sheet).doesNotContain("data-command=\"leave\"", "data-command=\"undo\"", "data-command=\"pair\"")
                .contains("data-command=\"sorted\"", "data-command=\"note\"");
    }

    @Test void the_sheet_says_which_seat_it_is_and_whose_if_they_gave_a_name() {
        ClassView wicks = EVENINGS.get("wicks");

        assertThat(text(title(screens.sheet(wicks, 4, LEAD)))).isEqualToNormalizingWhitespace("Seat 4 Cleo");
        assertThat(text(title(screens.sheet(wicks, 3, LEAD)))).isEqualToNormalizingWhitespace("Seat 3");
    }

    private static String title(String sheet) {
        int from = sheet.indexOf("<h2");
        return sheet.substring(from, sheet.indexOf("</h2>", from));
    }

    @Test void closing_the_class_tells_once_of_each_seat_what_would_be_left_undone() {
        Map<String, ClassView> closing = Evenings.closing();

        assertThat(asked(closing.get("setting"))).isEqualTo("Seats 6, 7 and 8 have not poured; "
                + "seats 1, 2, 4 and 5 are still setting, ready about 20:30 to 20:50.");
        assertThat(asked(closing.get("wrapping"))).isEqualTo("Seat 8 has not been tried by hand; "
                + "seat 4 is not done with Label and wrap; seats 5 and 6 are not done with Trim the wick.");
        assertThat(asked(closing.get("done"))).isEqualTo("Everybody is done.");
    }

    private String asked(ClassView view) {
        assertThat(screens.page(ScreenKind.INSTRUCTOR, view, LEAD)).contains("data-open=\"close-dialog\"");
        return text(screens.fragments(ScreenKind.INSTRUCTOR, view, LEAD).get("close-ask")).strip();
    }

    @Test void a_candle_to_be_tried_says_so_once_in_the_helpers_list() {
        String seats = text(screens.fragments(ScreenKind.HELPER, EVENINGS.get("computed-try"), HELPER).get("seats"));

        assertThat(seats).contains("try it").doesNotContainPattern("try it\\s+try it");
    }

    @Test void what_was_told_and_has_changed_is_folded_once_it_is_old() {
        Evening moved = Evenings.cure().event(47, new ClassEvent.ActivityOpened(new ActivityId("drinks")));
        String fresh = screens.page(ScreenKind.WAIT, moved.view(47.5), LEAD);
        String old = screens.page(ScreenKind.WAIT, moved.view(52), LEAD);

        assertThat(fresh).containsPattern("<details class=\"fold wait__changes\" id=\"wait-changes-\\d+\" open>");
        assertThat(old).containsPattern("<details class=\"fold wait__changes\" id=\"wait-changes-\\d+\">");
    }

    @Test void when_nothing_is_left_but_the_hand_test_the_wall_does_not_speak_of_plenty_to_do() {
        String wall = screens.page(ScreenKind.WALL, EVENINGS.get("computed-try"), Viewer.GUEST);

        assertThat(wall).contains("after the hand test", "the candle stays where it is").doesNotContain("plenty to do");
    }

    @Test void once_the_finish_is_open_the_wall_says_so_and_lists_only_the_candles_still_to_be_tried() {
        ClassView view = Evenings.cure().open(106, "trim").done(107, "trim", 1, 2).view(108);
        Times times = new Times(Evening.ZONE);

        assertThat(WallMain.of(view, times).heading()).isEqualTo("Trim the wick");
        assertThat(WallMain.of(view, times).ribbon()).isEmpty();
        WallSeats seats = WallSeats.of(view, times);
        assertThat(seats.shape()).isEqualTo(WallSeats.Shape.LINE);
        assertThat(seats.groups().stream().flatMap(g -> g.seats().stream())).isNotEmpty().doesNotContain(1, 2);
    }

    @Test void forty_seats_on_the_wall_are_a_table_of_numbers_and_none_is_lost() {
        WallSeats seats = WallSeats.of(EVENINGS.get("cure-40"), new Times(Evening.ZONE));

        assertThat(seats.groups().stream().flatMap(g -> g.seats().stream()).sorted())
                .containsExactlyElementsOf(Stream.iterate(1, n -> n + 1).limit(40).toList());
        assertThat(seats.shape()).isEqualTo(WallSeats.Shape.COMPACT);
    }

    @Test void every_script_and_style_sheet_a_page_asks_for_is_there() throws IOException {
        Pattern asked = Pattern.compile("(?:src|href)=\"/(static/[^\"]+)\"");
        for (String page : everyPage()) {
            Matcher file = asked.matcher(page);
            while (file.find()) {
                for (String one : file.group(1).split("\\+")) { // sheets that come as one
                    String path = (one.startsWith("static/") ? one : "static/css/" + one)
                            + (one.contains(".") ? "" : ".css");
                    assertThat(Path.of(path)).exists();
                    assertThat(Files.size(Path.of(path))).isPositive();
                }
            }
        }
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", " ");
    }
}
