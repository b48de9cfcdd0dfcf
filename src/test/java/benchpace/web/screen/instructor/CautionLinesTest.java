package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.screen.OfflineScreens;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A caution's first sentence is the same from the board and, while taps wait, from the page itself. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CautionLinesTest {
    private static final int TEXTS = 2_000;
    private static final List<String> PIECES = List.of("e.g.", "i.e.", "approx.", "Approx.", "no.", "No.", "2", "70.5",
            "Hot wax", "casino.", "\u00e4no.", "burns!", "really?", "wait...", ",", "\u00a0", "(e.g.", "\"Stop.\"");

    private static List<String> texts() {
        Random random = new Random(20261126);
        List<String> texts = new ArrayList<>(List.of("", "Hot wax burns. Keep off.",
                "Wear gloves, e.g. of nitrile. Wait."));
        for (int i = 0; i < TEXTS; i++) {
            StringBuilder text = new StringBuilder("So");
            for (int word = random.nextInt(7); word > 0; word--) {
                text.append(random.nextInt(9) == 0 ? "\n" : " ").append(PIECES.get(random.nextInt(PIECES.size())));
            }
            texts.add(text.append(" now.").toString());
        }
        return texts;
    }

    @Test void the_board_and_the_page_part_a_caution_at_the_same_place(Browser browser) {
        OfflineScreens offline = new OfflineScreens();
        offline.page("/", "<!doctype html><title>Nothing</title>");
        List<String> texts = texts();
        try (BrowserContext context = browser.newContext()) {
            context.route("**", offline::answer);
            Page page = context.newPage();
            page.navigate(OfflineScreens.HOST + "/");
            Object parted = page.evaluate("""
                    async texts => (await import('/static/js/offline/lead.js'),
                      texts.map((await import('/static/js/offline/sentences.js')).parted))""", texts);

            assertThat(parted).isEqualTo(texts.stream().map(CautionLines::of)
                    .map(lines -> List.of(lines.first(), lines.rest())).toList());
        }
        assertThat(texts.stream().map(CautionLines::of).filter(lines -> !lines.rest().isEmpty()).count())
                .isGreaterThan(TEXTS / 4);
    }
}
