package benchpace.web.screen.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.ClassEvent;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.web.screen.PastEvenings;
import benchpace.web.screen.SampleGuests;
import benchpace.web.screen.Screens;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What looking back says of candles and causes. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReportPageTest {
    private static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "");
    private static final Times TIMES = new Times(Evening.ZONE);

    private static ReportPage page(Evening evening, double minute) {
        return ReportPage.of(evening.report(minute), LessonPanel.of(Optional.empty(), evening.live().plan(), TIMES),
                LEAD, TIMES);
    }

    private static Map<String, String> ready(ReportPage page) {
        return page.candles().stream().collect(Collectors.toMap(ReportPage.CandleRow::seat,
                ReportPage.CandleRow::ready));
    }

    @Test void a_candle_that_was_judged_or_trimmed_was_set_by_then_and_none_is_likely_ready_later() {
        Map<String, String> ready = ready(page(Evenings.over(), 111));

        assertThat(ready.get("1")).isEqualTo("judged set 20:38");
        assertThat(ready.get("5")).isEqualTo("set by 20:44");
        assertThat(ready.get("8")).as("nobody took it in hand").isEqualTo("likely ready about 20:45 to 21:05");
    }

    @Test void a_candle_still_setting_when_the_class_ended_is_told_as_that() {
        assertThat(page(Evenings.over(), 111).outcome()).startsWith(
                "Nobody told when the last candle was set; it was planned for 20:28.",
                "At seat 8 it was still setting when the class ended, likely ready about 20:45 to 21:05.");
    }

    @Test void the_last_candle_that_was_trimmed_was_set_by_then() {
        Evening trimmed = Evenings.cure().open(106, "trim").done(107, "trim", 1, 2, 4, 5, 6, 7, 8)
                .event(109, new ClassEvent.ClassClosed());

        assertThat(page(trimmed, 110).outcome().get(0)).contains("was set by 20:48, 20 min after the planned 20:28")
                .doesNotContain("likely");
    }

    @Test void a_hand_test_on_record_after_the_close_is_told_as_after_the_end() {
        assertThat(page(Evenings.triedAfterTheClose(), 113).outcome()).containsExactly(
                "The last candle was judged set at 20:52, after the class ended and 24 min after the planned 20:28.",
                "It was seat 8's.", "The class ended at 20:50, 9 min after the promised 20:41.");
    }

    @Test void its_links_lead_to_every_heading_in_order_by_its_own_words() {
        for (Evening evening : List.of(Evenings.over(), Evenings.cure(), PastEvenings.of(3))) {
            String html = new Screens().report(evening.report(240), Optional.empty(), evening.live().plan(), LEAD,
                    SampleGuests.known());
            List<String> headings = all("<h2 id=\"([^\"]+)\"[^>]*>(.*?)</h2>",
                    html.replaceAll("(?s)<dialog.*?</dialog>", ""));

            assertThat(all("<li><a href=\"#([^\"]+)\">(.*?)</a>", html)).hasSizeGreaterThan(6)
                    .containsExactlyElementsOf(headings);
        }
    }

    private static List<String> all(String pattern, String html) {
        return Pattern.compile(pattern).matcher(html).results().map(m -> m.group(1) + " " + m.group(2)).toList();
    }

    @Test void minutes_that_overlap_are_a_plain_fact_and_no_fault() {
        String html = new Screens().report(Evenings.over().report(111), Optional.empty(), Evenings.over().live().plan(),
                LEAD, SampleGuests.known());

        assertThat(html).contains("several things held the class at the same time, so these minutes overlap.")
                .doesNotContain("do not add up").doesNotContainPattern("\\btick");
    }
}
