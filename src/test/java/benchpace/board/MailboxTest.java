package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassView;
import benchpace.board.view.MadeView;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** One screen's mailbox: it holds one view, the newest, however many come while the screen is asleep. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MailboxTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    private static final Duration AT_ONCE = Duration.ofMillis(1);
    private static final Duration LONG = Duration.ofSeconds(30);

    private final List<Mailbox> closed = new ArrayList<>();
    private final Mailbox mailbox = new Mailbox(closed::add);

    /** The class after so many events, seen at a time. */
    private static ClassView view(long seq, Instant now) {
        List<Recorded> events = new ArrayList<>();
        events.add(new Recorded(1, "create", "instructor", EVENING, EVENING, new ClassEvent.ClassCreated(
                Demo.eveningPlan(), "Thursday", EVENING, Demo.eveningRoster().places())));
        for (long n = 2; n <= seq; n++) {
            events.add(new Recorded(n, "note-" + n, "instructor", EVENING, EVENING,
                    new ClassEvent.ClassNoted("note " + n)));
        }
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC)
                .view("thursday", LiveClass.of(events), now);
    }

    private static MadeView view(long number, long seq) {
        return MadeView.whole(number, view(seq, EVENING));
    }

    private Optional<Long> next(Duration patience) throws InterruptedException {
        return mailbox.take(patience).map(made -> made.view().seq());
    }

    @Test void of_many_views_the_newest_is_kept_and_no_other() throws InterruptedException {
        for (long seq = 1; seq <= 30; seq++) {
            mailbox.put(MadeView.whole(seq, view(Math.min(seq, 20), EVENING.plusSeconds(seq))));
        }

        assertThat(next(AT_ONCE)).contains(20L);
        assertThat(next(AT_ONCE)).isEmpty();
    }

    @Test void an_older_view_never_comes_after_a_newer_one() throws InterruptedException {
        mailbox.put(view(3, 3));
        mailbox.put(view(2, 2));
        assertThat(next(AT_ONCE)).contains(3L);

        mailbox.put(view(2, 2));
        mailbox.put(view(3, 3));

        assertThat(next(AT_ONCE)).as("fetched views count too").isEmpty();
    }

    @Test void a_view_that_time_alone_changed_comes_also_where_the_clock_was_set_back() throws InterruptedException {
        long number = 0;
        for (int seconds : new int[] {0, 60, -3_600}) {
            Instant now = EVENING.plusSeconds(seconds);
            mailbox.put(MadeView.whole(++number, view(3, now)));

            assertThat(mailbox.take(AT_ONCE).map(made -> made.view().now())).contains(now);
        }
    }

    @Test void whoever_waits_is_woken_by_a_view() throws Exception {
        CompletableFuture<Optional<Long>> waiting = waiting();

        mailbox.put(view(1, 2));

        assertThat(waiting.get(10, TimeUnit.SECONDS)).contains(2L);
    }

    @Test void whoever_waits_is_woken_by_closing_and_a_closed_mailbox_gives_nothing() throws Exception {
        CompletableFuture<Optional<Long>> waiting = waiting();

        mailbox.close();

        assertThat(waiting.get(10, TimeUnit.SECONDS)).isEmpty();
        mailbox.put(view(1, 2));
        assertThat(next(LONG)).isEmpty();
        assertThat(mailbox.isClosed()).isTrue();
        assertThat(closed).containsExactly(mailbox);
    }

    private CompletableFuture<Optional<Long>> waiting() {
        return CompletableFuture.supplyAsync(() -> {
            try {
                return next(LONG);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        });
    }
}
