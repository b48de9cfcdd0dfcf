package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import benchpace.board.time.SettableClocks;
import benchpace.web.Browsers;
import benchpace.web.Device;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Clocks that differ, seen on a tablet and answered with one tap. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClockChoiceInABrowserTest {
    @TempDir Path data;
    private final SettableClocks computer = new SettableClocks(Instant.parse("2027-03-04T16:00:00Z"), true);
    private TestBoard board;
    private String id;
    private Browser browser;
    private final List<Device> devices = new ArrayList<>();

    @BeforeEach void open(Browser browser) {
        this.browser = browser;
        board = new TestBoard(data, log -> computer.start(log::fits), StreamLimits.USUAL);
        id = board.evening();
        board.tap(id, TestBoard.opening("welcome")).ok();
        computer.passMinutes(5).jump(Duration.ofHours(2));
        board.state(id);
        computer.passMinutes(1);
    }

    @AfterEach void close() {
        devices.forEach(Device::assertNoComplaint);
        devices.forEach(Device::close);
        board.close();
    }

    private Device at(Device device, String path) {
        devices.add(device);
        return device.pairedBy(board.instructor()).at(path);
    }

    @Test void the_instructor_reads_both_times_and_one_tap_sets_every_screen_right() {
        Device tablet = at(Device.tablet(board, browser), "/classes/" + id + "/instructor");
        Device wall = at(Device.wall(board, browser), "/classes/" + id + "/wall");
        Locator told = tablet.find("#clocks");

        assertThat(told).containsText("Since 17:05 the computer's clock is 2 h ahead of the board's time.");
        assertThat(told.locator("[data-clock-choice=board]")).hasText("The board is right 17:06");
        assertThat(told.locator("[data-clock-choice=computer]")).hasText("The computer is right 19:06");
        assertThat(tablet.find(".bar__clock")).hasText("17:06");
        assertThat(wall.page().locator("body")).not().containsText("computer");

        told.locator("[data-clock-choice=computer]").click();

        assertThat(told).hasText("");
        assertThat(tablet.find(".bar__clock")).hasText("19:06");
        assertThat(tablet.find("#now")).containsText("Choose and wipe the glass");
        assertThat(tablet.find("#middle")).containsText("open 1 min, planned"); // lasted as long as before
    }

    @Test void the_start_page_tells_both_times_where_it_asks() {
        Locator told = at(Device.tablet(board, browser), "/").find("#clocks");

        assertThat(told.locator("[data-clock-choice=board]")).hasText("The board is right 17:06");
        assertThat(told.locator("[data-clock-choice=computer]")).hasText("The computer is right 19:06");
    }

    @Test void on_a_phone_the_question_leaves_most_of_the_screen_to_the_class() {
        Device phone = at(Device.phone(board, browser), "/classes/" + id + "/instructor");
        Locator told = phone.find("#clocks");
        assertThat(told.locator("[data-clock-choice]")).hasCount(2);

        Assertions.assertThat(told.locator("[data-clock-choice=board]").boundingBox().y)
                .isEqualTo(told.locator("[data-clock-choice=computer]").boundingBox().y);
        Assertions.assertThat(phone.find("#now .now__heading").boundingBox().y).isLessThan(844 / 2.0);
    }

    @Test void a_table_of_twenty_four_stays_in_sight_under_the_question() {
        String big = board.create("{\"planId\":\"big-table\",\"seats\":24,\"name\":\"Large\"}");
        board.tap(big, TestBoard.opening("vessel")).ok();
        computer.passMinutes(3);
        board.tap(big, TestBoard.finish(1, "vessel")).ok();
        computer.passMinutes(9); // it is asked whether somebody taps: one line more
        Device tablet = at(Device.tablet(board, browser), "/classes/" + big + "/instructor");
        assertThat(tablet.find("#clocks [data-clock-choice]")).hasCount(2);

        assertThat(tablet.find("#now .now__quiet")).isVisible();
        BoundingBox last = tablet.find("#tile-24").boundingBox();
        Assertions.assertThat(last.y + last.height).isLessThanOrEqualTo(800);
    }

    @Test void what_is_said_of_the_network_is_read_whole() {
        Device tablet = at(Device.tablet(board, browser), "/classes/" + id + "/instructor");
        assertThat(tablet.find("#clocks [data-clock-choice]")).hasCount(2);
        board.goAway();

        assertThat(tablet.find("#status")).containsText("Don't reload");
        Assertions.assertThat(tablet.find("#status").evaluate("e => e.scrollWidth <= e.clientWidth")).isEqualTo(true);
        board.comeBack();
    }
}
