package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.Stories;
import benchpace.board.cooling.PlanCureClock;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Classes that always need longer for their wicks than the plan says. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StepLessonsTest {
    private static final String PLAN = Stories.plan().id().value();
    private static final String PLACE = Stories.plan().place();

    @TempDir
    private Path folder;
    private Database database;
    private StepLessons lessons;

    @BeforeEach void open() {
        database = Database.open(folder);
        lessons = new StepLessons(new StepBeliefs(database), InstantSource.fixed(TestClass.instant(0)));
    }

    @AfterEach void close() {
        database.close();
    }

    /** Six seats need fourteen minutes for their wicks, where the plan has four. */
    private static TestClass slowAtWicks() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks");
        Stories.othersTap(c, 17, 0, "wicks").minute(18.5).open("mix");
        return Stories.othersTap(c, 23, 0, "mix").minute(25).open("pour");
    }

    private static LiveClass closed() {
        return Stories.othersTap(slowAtWicks(), 28, 0, "pour").minute(100).close().live();
    }

    @Test void closed_classes_teach_and_open_ones_do_not_yet() {
        assertThat(lessons.lesson(PLAN, PLACE, List.of(slowAtWicks().live())).steps()).isEmpty();
        assertThat(lessons.lesson(PLAN, "elsewhere", List.of(closed())).steps()).isEmpty();

        StepLessons.Lesson lesson = lessons.lesson(PLAN, PLACE, List.of(closed(), closed(), closed()));

        assertThat(lesson.classes()).isEqualTo(3);
        StepLessons.Figure wicks = lesson.figures(Stories.plan()).get(1);
        assertThat(wicks.plannedMinutes()).isEqualTo(4);
        assertThat(wicks.learnedMinutes()).as("between the plan's 4 and the 14 that were seen").isBetween(6.0, 13.5);
        assertThat(wicks.expectedMinutes()).as("nothing changes silently").isEqualTo(4);
        assertThat(lesson.news()).isTrue();
    }

    @Test void the_next_class_is_judged_by_what_was_accepted_and_one_that_has_begun_is_not() {
        LiveClass running = Stories.stuckAtWicks(6).live();
        lessons.begin("running", running);
        assertThat(lessons.of("running", running)).isEmpty();
        assertThat(lessons.accept(PLAN, PLACE, List.of(closed(), closed(), closed()))).isTrue();

        assertThat(lessons.of("running", running)).isEmpty();
        assertThat(lessons.of("next", running)).containsKey("wicks");
        lessons.begin("next", running);
        assertThat(lessons.lesson(PLAN, PLACE, List.of(closed(), closed(), closed())).news()).isFalse();
        assertThat(lessons.forget(PLAN, PLACE)).isTrue();
        assertThat(lessons.of("next", running)).as("it has begun").containsKey("wicks");
        assertThat(lessons.of("after", running)).isEmpty();
    }

    @Test void a_class_set_up_long_before_starts_from_what_holds_when_it_begins() {
        LiveClass waiting = TestClass.of(Stories.plan(), 6).live();
        assertThat(lessons.of("planned", waiting)).isEmpty();
        lessons.accept(PLAN, PLACE, List.of(closed(), closed()));
        assertThat(lessons.of("planned", slowAtWicks().live())).containsKey("wicks");
    }

    @Test void the_next_class_is_forecast_to_go_home_later_by_what_was_taught() {
        lessons.accept(PLAN, PLACE, List.of(closed(), closed(), closed(), closed()));
        assertThat(home(new PosteriorPaceWatch(lessons))).isAfter(home(new PosteriorPaceWatch()).plusSeconds(60));
    }

    private static Instant home(PosteriorPaceWatch watch) {
        LiveClass live = TestClass.of(Stories.plan(), 6).minute(1).open("wicks").live();
        Instant now = TestClass.instant(1);
        return watch.watch("test", live, new PlanCureClock().clocks(live, now), now).home().p50();
    }

    @Test void a_class_that_nobody_else_has_any_more_is_not_kept_for_what_it_taught() {
        List<LiveClass> past = new ArrayList<>(List.of(closed(), closed()));
        StepLessons.Lesson lesson = lessons.lesson(PLAN, PLACE, past);
        WeakReference<LiveClass> deleted = new WeakReference<>(past.remove(0));

        await().atMost(Duration.ofSeconds(20)).until(() -> {
            System.gc();
            return deleted.refersTo(null);
        });

        assertThat(lessons.lesson(PLAN, PLACE, past).classes()).isEqualTo(1);
        past.add(0, closed());
        assertThat(lessons.lesson(PLAN, PLACE, past)).as("it taught in figures").isEqualTo(lesson);
    }

    @Test void without_closed_classes_there_is_nothing_to_accept() {
        assertThat(lessons.accept(PLAN, PLACE, List.of())).isFalse();
        assertThat(lessons.forget(PLAN, PLACE)).isFalse();
    }
}
