package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.units.UnitChoice;
import benchpace.web.screen.data.DataPage;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** One word for one thing on every screen: "tap" is the act, "done" the state, and each page has one name. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlainWordsTest {
    private static final Pattern PAGE_NAME = Pattern.compile("\\bBoard\\b|, board\\b");
    private static final Pattern STATE = Pattern.compile(
            "\\b(un)?tick(s|ed|ing)?\\b|\\b(un)?finished\\b|\\bwait[- ]plan\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ATTRIBUTE = Pattern.compile(
            "(?:aria-label|placeholder|title|alt|data-words|data-after|data-past)=\"([^\"]*)\"");
    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*href=\"([^\"]*)\"[^>]*>(.*?)</a>", Pattern.DOTALL);
    private static final Pattern JAVA_TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern SCRIPT_TEXT = Pattern.compile("'((?:[^'\\\\\\n]|\\\\.)*)'|`((?:[^`\\\\]|\\\\.)*)`");
    private static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "");
    private static final Viewer HELPER = new Viewer(Role.HELPER, "MO");

    /** More seats than these say nothing new. */
    private static final int SEATS = 8;
    /** Made once: views never change. */
    private static final Map<String, String> PAGES = everyPage();

    private static Map<String, String> everyPage() {
        Screens screens = new Screens();
        Map<String, String> pages = new LinkedHashMap<>();
        Map<String, ClassView> evenings = new LinkedHashMap<>(Evenings.all());
        evenings.putAll(Evenings.closing());
        evenings.forEach((name, view) -> {
            for (ScreenKind kind : ScreenKind.values()) {
                Viewer viewer = kind == ScreenKind.WALL ? Viewer.GUEST : kind == ScreenKind.HELPER ? HELPER : LEAD;
                pages.put(kind + " " + name, screens.page(kind, view, viewer));
            }
            view.seats().stream().limit(SEATS).forEach(seat -> {
                pages.put("sheet " + name + " " + seat.seat(), screens.sheet(view, seat.seat(), LEAD));
                pages.put("guest " + name + " " + seat.seat(), screens.guest(GuestPage.of(view, seat.seat(), "code")));
            });
        });
        pages.put("look back", screens.report(Evenings.read().report(62), Optional.empty(),
                Evenings.read().live().plan(), LEAD, SampleGuests.known()));
        for (Optional<Role> role : List.of(Optional.<Role>empty(), Optional.of(Role.INSTRUCTOR),
                Optional.of(Role.HELPER))) {
            pages.put("start " + role, screens.start(ScreenGallery.start(role)));
        }
        pages.put("start of a newcomer", screens.start(ScreenGallery.newcomer(Role.INSTRUCTOR)));
        pages.put("start of a new helper", screens.start(ScreenGallery.newcomer(Role.HELPER)));
        PrepSituations.all().forEach((name, given) -> pages.put("prep " + name, screens.prep(given)));
        HistoryScreens.all(LEAD).forEach((name, page) -> pages.put("history " + name, screens.history(page)));
        pages.put("devices", screens.devices(ScreenGallery.devices(false)));
        pages.put("devices alone", screens.devices(ScreenGallery.devices(true)));
        pages.put("data", screens.data(ScreenGallery.data()));
        pages.put("data, names forgotten", screens.data(new DataPage("/home/loft/benchpace/data", "48.1 MB",
                ScreenGallery.data().backup(), SampleGuests.on(), SampleGuests.unreadable())));
        for (Viewer viewer : List.of(LEAD, new Viewer(Role.HELPER, "MO"))) {
            pages.put("plans " + viewer.role(), screens.plans(PlanScreens.list(viewer)));
            pages.put("no plans " + viewer.role(), screens.plans(PlanScreens.none(viewer)));
        }
        for (EditPage.Standing standing : EditPage.Standing.values()) {
            pages.put("plan " + standing, EditPlanScreens.page(screens, standing, UnitChoice.METRIC));
        }
        pages.put("versions", screens.versions(PlanScreens.versions(LEAD)));
        pages.put("version", screens.version(PlanScreens.version(LEAD)));
        return pages;
    }

    @Test void no_screen_has_a_second_word_for_a_tap_for_done_or_for_a_page() {
        List<String> found = new ArrayList<>();
        PAGES.forEach((name, page) -> words(page).stream()
                .filter(text -> STATE.matcher(text).find() || PAGE_NAME.matcher(text).find())
                .forEach(text -> found.add(name + ": " + text)));
        assertThat(found).isEmpty();
    }

    @Test void whatever_leads_to_a_page_says_its_name() {
        PAGES.forEach((name, page) -> {
            Matcher link = LINK.matcher(page);
            while (link.find()) {
                String says = link.group(2).replaceAll("<[^>]*>", " ");
                if (link.group(1).endsWith("/wait")) {
                    assertThat(says).as(name).contains("The wait");
                } else if (link.group(1).endsWith("/instructor")) {
                    assertThat(says).as(name).contains("The table");
                }
            }
        });
    }

    @Test void no_sentence_in_the_program_has_one_either() throws IOException {
        assertThat(sentences(Path.of("src/main/java"), ".java", JAVA_TEXT)).isEmpty();
        assertThat(sentences(Path.of("static/js"), ".js", SCRIPT_TEXT)).isEmpty();
    }

    /** Texts of more than one word that have one of the other words in them: names of events and types stay. */
    private static List<String> sentences(Path folder, String suffix, Pattern text) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(suffix)).sorted().toList()) {
                Matcher literal = text.matcher(Files.readString(file).replaceAll("(?m)^\\s*(//|\\*|/\\*).*$", ""));
                while (literal.find()) {
                    String words = literal.group().substring(1, literal.group().length() - 1);
                    if (words.contains(" ") && STATE.matcher(words.replaceAll("\\$\\{[^}]*}", "")).find()) {
                        found.add(file.getFileName() + ": " + words);
                    }
                }
            }
        }
        return found;
    }

    /** All that is read or read out: the text, piece by piece, and the labels. */
    private static List<String> words(String page) {
        List<String> words = new ArrayList<>(List.of(page.replaceAll("(?s)<script.*?</script>", "").split("<[^>]*>")));
        Matcher label = ATTRIBUTE.matcher(page);
        while (label.find()) {
            words.add(label.group(1));
        }
        return words;
    }
}
