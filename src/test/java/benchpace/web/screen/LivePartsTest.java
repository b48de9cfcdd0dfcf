package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.live.TestClass;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a page holds at first is what its stream draws, part by part, for many and for one. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LivePartsTest {
    private static final Viewer AT_A_SEAT = new Viewer(Role.HELPER, "MO", "phone");
    private final Screens screens = new Screens();

    private static ClassView view() {
        TestClass c = TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(9).finish(1, "wicks")
                .claim(2, "MO");
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC)
                .view("tonight", c.live(), c.now());
    }

    @Test void the_parts_of_a_stream_are_those_of_the_page() {
        ClassView view = view();
        for (ScreenKind kind : ScreenKind.values()) {
            for (Viewer viewer : List.of(new Viewer(Role.INSTRUCTOR, "", "tablet"), AT_A_SEAT, Viewer.GUEST)) {
                Map<String, String> sent = new LinkedHashMap<>(screens.live().shared(kind, view, viewer, true).html());
                sent.putAll(screens.live().own(kind, view, viewer).html());

                assertThat(sent).as(kind + " " + viewer).isEqualTo(screens.fragments(kind, view, viewer));
            }
        }
    }

    @Test void helpers_who_are_at_no_seat_are_shown_the_same_and_one_who_is_sees_that_it_is_theirs() {
        ClassView view = view();

        assertThat(new Viewer(Role.HELPER, "AB", "one").amongMany(view))
                .isEqualTo(new Viewer(Role.HELPER, "CD", "two").amongMany(view))
                .isNotEqualTo(AT_A_SEAT.amongMany(view))
                .isNotEqualTo(new Viewer(Role.INSTRUCTOR, "AB", "one").amongMany(view));
    }
}
