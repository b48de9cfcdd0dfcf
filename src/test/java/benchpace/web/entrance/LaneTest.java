package benchpace.web.entrance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Callers who share threads; one of them asks for far more than the others. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LaneTest {
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Lane lane = new Lane("lane", 3, 2, 8);
    private final CountDownLatch end = new CountDownLatch(1);
    private final AtomicInteger greedyRunning = new AtomicInteger();

    @AfterEach void close() {
        end.countDown();
        lane.close();
    }

    private boolean greedyAsks() {
        return lane.take("greedy", () -> {
            greedyRunning.incrementAndGet();
            try {
                end.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            greedyRunning.decrementAndGet();
        });
    }

    @Test void whoever_holds_its_threads_for_ever_leaves_one_to_the_others() {
        for (int i = 0; i < 5; i++) {
            assertThat(greedyAsks()).isTrue();
        }
        List<String> done = new CopyOnWriteArrayList<>();

        assertThat(lane.take("modest", () -> done.add("modest"))).isTrue();

        await().atMost(PATIENCE).until(() -> done.contains("modest"));
        await().atMost(PATIENCE).until(() -> greedyRunning.get() == 2);
    }

    @Test void one_caller_fills_half_of_the_queue_and_the_rest_is_for_others() {
        for (int i = 0; i < 2 + 4; i++) {
            assertThat(greedyAsks()).isTrue();
        }

        assertThat(greedyAsks()).isFalse();
        assertThat(lane.take("modest", () -> { })).isTrue();
    }

    @Test void what_waited_is_done_in_the_order_of_its_caller_and_takes_turns_with_others() {
        Lane narrow = new Lane("narrow", 1, 1, 20);
        List<String> done = new CopyOnWriteArrayList<>();
        narrow.take("greedy", () -> {
            try {
                end.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        for (String each : List.of("g1", "g2", "g3")) {
            narrow.take("greedy", () -> done.add(each));
        }
        narrow.take("modest", () -> done.add("m1"));

        end.countDown();

        await().atMost(PATIENCE).until(() -> done.size() == 4);
        narrow.close();
        assertThat(done).containsExactly("m1", "g1", "g2", "g3");
    }

    @Test void what_fails_takes_no_turn_with_it() {
        List<String> done = new CopyOnWriteArrayList<>();
        for (int i = 0; i < 6; i++) {
            lane.take("clumsy", () -> {
                throw new IllegalStateException("as told to");
            });
        }

        await().dontCatchUncaughtExceptions().atMost(PATIENCE)
                .until(() -> lane.take("clumsy", () -> done.add("done")));
        await().dontCatchUncaughtExceptions().atMost(PATIENCE).until(() -> done.contains("done"));
    }
}
