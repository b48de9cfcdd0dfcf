package benchpace.web.stream;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassViews;
import benchpace.board.view.Computed;
import benchpace.board.view.MadeView;
import benchpace.board.view.ViewMaker;
import benchpace.live.TestClass;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a screen is sent of each view, and how often it is drawn for many. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShownPartsTest {
    private final TestClass tonight = TestClass.evening(2).open("welcome").minute(5).open("wicks");
    private final ViewMaker maker = new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC);
    private final ClassViews views = new ClassViews(maker.making("tonight", alone(),
            () -> new Computed.Moment(tonight.live(), tonight.now())), () -> tonight.live().seq(), tonight::now);
    /** What was drawn, in order: the key, and whether all of it. */
    private final List<String> drawn = new ArrayList<>();

    private Supplier<ClassModels> alone() {
        ClassModels models = maker.models("tonight");
        return () -> models;
    }

    /** A screen that shows how many are done, draws that as often as it is asked, and names its own device. */
    private final class Counting implements LiveScreen {
        private final String key;
        private final String device;

        Counting(String key, String device) {
            this.key = key;
            this.device = device;
        }

        @Override public Object key(ClassView view) {
            return key;
        }

        @Override public Map<String, String> shared(ClassView view, boolean all) {
            drawn.add(key + (all ? " all" : ""));
            Map<String, String> parts = new LinkedHashMap<>();
            parts.put("done", view.steps().get(1).finished() + " done");
            parts.put("always", "the same");
            if (all) {
                parts.put("home", "by " + view.seq());
            }
            return parts;
        }

        @Override public Map<String, String> own(ClassView view) {
            return Map.of("undo", device);
        }
    }

    private static String sent(ShownParts screen, MadeView view) {
        ByteArrayOutputStream events = new ByteArrayOutputStream();
        screen.add(view, events);
        return events.toString(StandardCharsets.UTF_8);
    }

    @Test void screens_that_show_the_same_have_it_drawn_once_and_each_has_its_own_beside() {
        MadeView view = views.publish().orElseThrow();

        String one = sent(new ShownParts(new Counting("tables", "a")), view);
        String other = sent(new ShownParts(new Counting("tables", "b")), view);
        sent(new ShownParts(new Counting("phones", "c")), view);

        assertThat(drawn).containsExactly("tables all", "phones all");
        assertThat(one).contains("event: done\ndata: 0 done\n\n", "event: undo\ndata: a\n\n");
        assertThat(other).contains("event: done\ndata: 0 done\n\n", "event: undo\ndata: b\n\n");
    }

    @Test void only_what_changed_is_sent_and_what_is_computed_only_once_it_was_computed_anew() {
        ShownParts screen = new ShownParts(new Counting("tables", "a"));
        sent(screen, views.publish().orElseThrow());
        tonight.minute(6).finish(1, "wicks");

        assertThat(sent(screen, views.atOnce().orElseThrow())).isEqualTo("event: done\ndata: 1 done\n\n");
        assertThat(sent(screen, views.publish().orElseThrow())).isEqualTo("event: home\ndata: by 4\n\n");
        assertThat(drawn).containsExactly("tables all", "tables", "tables all");
    }

    @Test void a_screen_that_missed_what_was_computed_is_sent_it_with_the_next_tap() {
        ShownParts screen = new ShownParts(new Counting("tables", "a"));
        sent(screen, views.publish().orElseThrow());
        tonight.minute(6).finish(1, "wicks");
        views.publish(); // replaced in its mailbox by what comes next
        tonight.minute(7).finish(2, "wicks");

        assertThat(sent(screen, views.atOnce().orElseThrow())).contains("2 done", "by 5");
    }
}
