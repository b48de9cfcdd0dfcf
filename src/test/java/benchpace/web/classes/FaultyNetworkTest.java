package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Device;
import benchpace.web.FaultyNetwork;
import benchpace.web.FaultyNetwork.Fault;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A tablet at the table and the wall behind networks that fail in turn, in real browsers. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FaultyNetworkTest extends TapScreens {

    /** Each fault befalls one tap, made while it lasts; it ends once the tap has met it. */
    @Test void whatever_befalls_the_network_every_tap_arrives_once_and_all_screens_come_to_agree() throws Exception {
        try (FaultyNetwork atTable = new FaultyNetwork(board); FaultyNetwork atWall = new FaultyNetwork(board)) {
            Device tablet = live(here(Device.tablet(board, browser).through(atTable.port()))
                    .pairedBy(board.instructor()), table());
            Device wall = here(Device.wall(board, browser).through(atWall.port()))
                    .at("/classes/" + id + "/wall");
            assertThat(wall.find("main")).containsText("Welcome");
            long before = seq();

            List<Fault> faults = List.of(Fault.LATE, Fault.SLOW, Fault.TWICE, Fault.CUT_IN_REQUEST,
                    Fault.CUT_IN_ANSWER, Fault.RESET, Fault.SWALLOWED);
            for (int i = 0; i < faults.size(); i++) {
                atTable.has(faults.get(i));
                atWall.has(faults.get(i));
                tablet.find("#tile-" + (i + 1)).tap();
                await(faults.get(i).name()).atMost(PATIENCE).pollInSameThread().until(() -> atTable.struck() > 0);
                atTable.recovers();
                atWall.recovers();
                settled(tablet);
            }

            assertThat(since(before, "type")).hasSize(faults.size()).containsOnly("finish-step");
            assertThat(since(before, "seat")).containsExactly("1", "2", "3", "4", "5", "6", "7");
            for (int seat = 1; seat <= faults.size(); seat++) {
                assertThat(face(tablet.page(), seat)).hasClass(FINISHED);
            }
            Device fresh = here(Device.wall(board, browser)).at("/classes/" + id + "/wall");
            String right = fresh.find("main").innerText();
            await().atMost(PATIENCE).pollInSameThread().untilAsserted(() ->
                    assertThat(wall.find("main").innerText()).isEqualTo(right));
        }
    }

    private static void settled(Device tablet) {
        await().atMost(PATIENCE).pollInSameThread().until(() -> ask(tablet, "taps", "it.kept().length").equals(0));
    }
}
