package benchpace.web.style;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.SeatView.Mark;
import benchpace.plan.Picture;
import benchpace.plan.colour.Light;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.style.StylePage;
import benchpace.web.screen.style.Tokens;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The page of the look leaves nothing out: what is added to the screens is shown on it, or this fails. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StylePageTest {
    private static final Samples SAMPLES = new Samples(ZoneId.of("Europe/Berlin"));
    private static final String PAGE = new Screens().style(SAMPLES.given(Optional.empty()),
            new Viewer(Role.HELPER, "MO"));
    /** What stands on it as a tile, without the screens. */
    private static final String TILES = PAGE.substring(PAGE.indexOf("id=\"tiles\""), PAGE.indexOf("id=\"wall\""));

    @Test void a_tile_stands_there_in_every_state() {
        assertThat(Arrays.stream(Mark.values()).map(Mark::token).filter(mark -> !TILES.contains("face--" + mark + " ")
                && !TILES.contains("face--" + mark + "\""))).isEmpty();
        assertThat(TILES).contains("face--asks", "says done", "may be ready", "face__helper",
                "helped by", "not sent yet", "waits its turn");
    }

    @Test void every_mark_that_a_screen_may_name_stands_there() throws IOException {
        List<String> marks = Pattern.compile("mark\\.equals\\(\"([a-z-]+)\"\\)")
                .matcher(Files.readString(Path.of("src/main/jte/shell/mark.jte"))).results()
                .map((MatchResult found) -> found.group(1)).toList();

        assertThat(StylePage.MARKS).containsExactlyInAnyOrderElementsOf(marks);
        assertThat(PAGE).doesNotContain("<svg class=\"mark\" viewBox=\"0 0 24 24\" aria-hidden=\"true\" "
                + "focusable=\"false\">\n</svg>");
    }

    @Test void every_drawing_stands_there_and_with_three_vessels_where_one_is_poured() {
        for (Picture picture : Picture.values()) {
            assertThat(PAGE).contains("<span>" + picture.name().toLowerCase(Locale.ROOT).replace('_', ' ') + "</span>");
        }
        assertThat(SAMPLES.given(Optional.empty()).vessels()).hasSize(3);
        assertThat(PAGE.split("class=\"drawing\"", -1).length - 1).isGreaterThanOrEqualTo((int) Arrays.stream(
                Picture.values()).mapToInt(picture -> picture.showsVessel() ? 3 : 1).sum());
    }

    @Test void everything_that_a_guest_s_phone_can_say_stands_there() {
        for (String words : List.of("Nothing to tap tonight", "Welcome", "A candle for two", "Take your time",
                "We are done", "Your host knows that you are done", "Your candle is setting",
                "Your candle may be ready", "Your candle is to be tried", "All done for now", "Thank you for coming")) {
            assertThat(PAGE).contains(words);
        }
    }

    @Test void no_colour_is_told_to_be_too_pale() {
        assertThat(PAGE).doesNotContain("too little");
    }

    @Test void a_light_that_the_page_is_held_to_says_every_token_again() {
        Tokens tokens = SAMPLES.tokens();
        String night = tokens.sheet(Light.NIGHT);

        assertThat(tokens.night().keySet()).isEqualTo(tokens.day().keySet());
        assertThat(tokens.night().get("paper")).isNotEqualTo(tokens.day().get("paper"));
        tokens.day().keySet().forEach(name -> assertThat(night).contains("--" + name + ": "));
        assertThat(night).contains("color-scheme: dark;");
    }
}
