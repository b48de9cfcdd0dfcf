package benchpace.board.view;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.Computed.Moment;
import benchpace.live.TestClass;
import java.time.ZoneOffset;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The two breaths of a tap: in which order they are numbered, and when there is something to show at once. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(60)
class ClassViewsTest {
    private final TestClass tonight = TestClass.evening(2).open("welcome").minute(5).open("wicks");
    private final ViewMaker maker = new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC);
    private final ClassModels models = maker.models("tonight");
    private final AtomicInteger computations = new AtomicInteger();
    /** Held up while it is not down. */
    private volatile CountDownLatch computing = new CountDownLatch(0);
    private final ClassViews views = new ClassViews(new ClassViews.Making() {
        @Override public Moment moment() {
            return new Moment(tonight.live(), tonight.now());
        }

        @Override public Computed compute(Moment of) {
            computations.incrementAndGet();
            try {
                computing.await();
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
            return maker.compute("tonight", of, models);
        }

        @Override public ClassView view(Moment at, Computed computed) {
            return maker.view("tonight", at, computed, models);
        }
    }, () -> tonight.live().seq(), tonight::now);

    @Test void nothing_is_shown_at_once_before_anything_was_computed() {
        assertThat(views.atOnce()).isEmpty();
    }

    @Test void nothing_is_shown_at_once_while_nothing_has_happened() {
        views.publish();

        assertThat(views.atOnce()).isEmpty();
    }

    @Test void a_tap_is_shown_once_at_once_and_then_whole_with_the_same_number_of_the_class() {
        views.publish();
        tonight.minute(6).finish(1, "wicks");

        MadeView first = views.atOnce().orElseThrow();
        assertThat(views.atOnce()).as("shown already").isEmpty();
        MadeView second = views.publish().orElseThrow();

        assertThat(first.whole()).isFalse();
        assertThat(second.whole()).isTrue();
        assertThat(first.view().seq()).isEqualTo(tonight.seq()).isEqualTo(second.view().seq());
        assertThat(first.view().seat(1).finished()).contains("wicks").isEqualTo(second.view().seat(1).finished());
        assertThat(second.order()).isGreaterThan(first.order());
        assertThat(computations).hasValue(2);
    }

    @Test void a_tap_is_shown_at_once_while_another_is_still_computed_and_what_was_computed_then_goes_with_it()
            throws Exception {
        MadeView before = views.publish().orElseThrow();
        computing = new CountDownLatch(1);
        tonight.minute(6).finish(1, "wicks");
        CompletableFuture<MadeView> slow = CompletableFuture.supplyAsync(() -> views.publish().orElseThrow());
        while (computations.get() < 2) {
            Thread.onSpinWait();
        }
        tonight.minute(7).finish(2, "wicks");

        MadeView now = views.atOnce().orElseThrow();
        computing.countDown();
        MadeView late = slow.get(30, TimeUnit.SECONDS);
        MadeView again = views.atOnce().orElseThrow();

        assertThat(now.computed()).isEqualTo(before.computed());
        assertThat(late.order()).as("of an older moment").isLessThan(now.order());
        assertThat(again.computed()).isEqualTo(late.computed());
        assertThat(again.order()).isGreaterThan(now.order());
        assertThat(again.view().seq()).isEqualTo(tonight.seq());
        assertThat(again.whole()).isFalse();
    }

    @Test void what_is_shown_at_once_stands_before_the_whole_view_of_the_same_moment_also_if_that_was_begun_sooner()
            throws Exception {
        views.publish();
        computing = new CountDownLatch(1);
        tonight.minute(6).finish(1, "wicks");
        CompletableFuture<MadeView> slow = CompletableFuture.supplyAsync(() -> views.publish().orElseThrow());
        while (computations.get() < 2) {
            Thread.onSpinWait();
        }

        MadeView late = views.atOnce().orElseThrow();
        computing.countDown();

        assertThat(slow.get(30, TimeUnit.SECONDS).order()).isGreaterThan(late.order());
    }

    @Test void somebody_who_looks_in_between_lets_nothing_be_shown_again() {
        views.publish();
        tonight.minute(5.2);

        views.latest();

        assertThat(views.atOnce()).as("the last tap was shown whole").isEmpty();
    }

    @Test void what_was_under_way_while_all_were_to_be_made_anew_is_shown_to_nobody() throws Exception {
        computing = new CountDownLatch(1);
        CompletableFuture<Boolean> slow = CompletableFuture.supplyAsync(() -> views.publish().isPresent());
        while (computations.get() < 1) {
            Thread.onSpinWait();
        }

        views.forget();
        computing.countDown();

        assertThat(slow.get(30, TimeUnit.SECONDS)).isFalse();
        assertThat(views.stale()).isTrue();
    }

    @Test void once_time_has_jumped_nothing_old_is_shown_at_once() {
        views.publish();
        tonight.minute(6).finish(1, "wicks");

        views.forget();

        assertThat(views.atOnce()).isEmpty();
    }
}
