package benchpace.web;

import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.remote.RemoteWebDriver;

/**
 * The main journey in WebKit, the engine of most instructors' tablets: pairing, a whole class from the welcome to the
 * look back, a network that goes away, a helper's phone and the wall.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(TabletEngine.class)
class EveningOnATabletTest {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final int SEATS = 3;

    @TempDir Path data;
    private TestBoard board;
    private String id;
    private TabletEngine.Engine engine;
    private RemoteWebDriver page;
    private int complaints;

    @BeforeEach void open(TabletEngine.Engine engine) {
        this.engine = engine;
        complaints = engine.complaints().size();
        board = new TestBoard(data, InstantSource.system(), StreamLimits.USUAL);
        id = board.create("{\"planId\":\"evening-pour\",\"seats\":" + SEATS
                + ",\"name\":\"Thursday\"}");
        page = engine.browser();
    }

    @AfterEach void close() {
        page.quit();
        board.close();
        assertThat(engine.complaints().stream().skip(complaints)).as("what pages complained of").isEmpty();
    }

    // ---- what a person does and sees

    private void window(int width, int height) {
        page.manage().window().setSize(new Dimension(width, height));
    }

    private void at(String path) {
        page.get(board.uri(path).toString());
    }

    private void press(String selector) {
        await().atMost(PATIENCE).ignoreExceptions().until(() -> {
            page.findElement(By.cssSelector(selector)).click();
            return true;
        });
    }

    private void reads(String selector, String words) {
        await().atMost(PATIENCE).ignoreExceptions().untilAsserted(() ->
                assertThat(page.findElement(By.cssSelector(selector)).getText()).contains(words));
    }

    private Object ask(String script) {
        return page.executeScript("return " + script);
    }

    /** Live, and its scripts at work: a tap on a page that is still loading falls on nothing. */
    private void live(String path) {
        at(path);
        await().atMost(PATIENCE).until(() -> (Boolean) page.executeAsyncScript("const done = arguments[0];"
                + "import('/static/js/clock.js').then((clock) => done(clock.sure()));"));
    }

    private void fits() {
        assertThat(ask("document.scrollingElement.scrollWidth <= window.innerWidth")).isEqualTo(true);
    }

    private void pair(String pin, String initials) {
        at("/");
        page.findElement(By.id("pin")).sendKeys(pin);
        if (!initials.isEmpty()) {
            page.findElement(By.id("pair-initials")).sendKeys(initials);
        }
        press("#pair-form button");
        reads(".paired", "This device");
    }

    // ---- what the board knows

    private JsonNode seat(int number) {
        return board.state(id).json().get("seats").get(number - 1);
    }

    private boolean done(int seat, String step) {
        return seat(seat).get("finished").toString().contains("\"" + step + "\"");
    }

    private void boardHas(int seat, String step) {
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(done(seat, step)).isTrue());
    }

    private void keepPicture(String name) {
        Path pictures = Path.of("target", "webkit");
        try {
            Files.createDirectories(pictures);
            Files.write(pictures.resolve(name + ".png"), page.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    // ---- the journey

    private void open(String step) {
        press("#next-button");
        await().atMost(PATIENCE).ignoreExceptions().until(() -> {
            page.findElements(By.id("ask-open")).stream().filter(WebElement::isDisplayed).forEach(WebElement::click);
            return isOpen(step);
        });
    }

    private boolean isOpen(String step) {
        for (JsonNode each : board.state(id).json().get("steps")) {
            if (each.get("id").asText().equals(step)) {
                return each.get("open").asBoolean();
            }
        }
        return false;
    }

    /** One tap on every tile, each on the board before the next. */
    private void everybody(String step) {
        for (int seat = 1; seat <= SEATS; seat++) {
            int number = seat;
            reads("#tile-" + seat + " .face[data-step='" + step + "'][data-can-finish='true']", "");
            press("#tile-" + seat);
            await().atMost(PATIENCE).ignoreExceptions().until(() -> {
                page.findElements(By.id("hand-ask-yes")).stream().filter(WebElement::isDisplayed)
                        .forEach(WebElement::click);
                return done(number, step);
            });
        }
    }

    @Test void a_class_goes_from_the_welcome_to_the_look_back() {
        window(1280, 900);
        pair(TestBoard.PIN, "");
        live("/classes/" + id + "/instructor");
        open("welcome");
        everybody("vessel");
        open("wicks");
        everybody("wicks");
        open("fragrance");
        everybody("fragrance");
        fits();
        keepPicture("tablet-fragrance");
        open("before-wax");
        open("mix");
        everybody("mix");
        open("pour");
        everybody("pour");
        everybody("centre");
        reads("#tile-1", "setting");
        fits();
        keepPicture("tablet-setting");
        open("trim");
        everybody("trim");
        open("wrap");
        everybody("wrap");
        reads("#next", "Everybody is done");
        press("#next-button");
        press("#close-dialog [data-command='close']");
        press("#next a");
        reads("h1", "Thursday");
        fits();
        keepPicture("look-back");
    }

    @Test void what_is_tapped_while_the_board_is_away_shows_at_once_and_arrives_when_it_is_back() {
        board.tap(id, opening("welcome")).ok();
        window(1280, 900);
        pair(TestBoard.PIN, "");
        live("/classes/" + id + "/instructor");
        reads("#now", "Welcome");
        board.goAway();
        reads("#status-words", "Not live");
        press("#tile-2");
        reads("[data-place='2'] [data-sent]", "done");
        keepPicture("tablet-away");

        board.comeBack();
        boardHas(2, "vessel");
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(page.findElement(By.id("status-words")).getText())
                .isEmpty());
    }

    @Test void the_sheet_of_a_seat_takes_back_its_last_tap() {
        board.tap(id, opening("welcome")).ok();
        window(1280, 900);
        pair(TestBoard.PIN, "");
        live("/classes/" + id + "/instructor");
        everybody("vessel");
        press("#undo button");
        await().atMost(PATIENCE).until(() -> !done(SEATS, "vessel"));
        press(".place__more[data-open-seat='1']");
        reads("#seat-sheet", "Seat 1");
        keepPicture("tablet-sheet");
    }

    @Test void a_helpers_phone_and_the_wall_follow() {
        board.tap(id, opening("welcome")).ok();
        window(390, 844);
        pair(TestBoard.HELPER_PIN, "MO");
        live("/classes/" + id + "/helper");
        reads("main", "Choose and wipe the glass");
        fits();
        keepPicture("phone");
        window(1920, 1080);
        live("/classes/" + id + "/wall");
        reads("main", "Welcome");
        board.tap(id, opening("wicks")).ok();
        reads("main", "Set the wick");
        fits();
        keepPicture("wall");
    }
}
