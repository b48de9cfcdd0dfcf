package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.Json;
import benchpace.files.log.AnyEvent;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.StarterPlans;
import benchpace.live.LiveClass;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Whatever is tapped in whatever class, every page of it is there, over the network, and no model of it fails.
 * {@code -Dpages=N} lets classes be N times as long, and tries N times as many of them.
 */
class EveryPageProperties {
    private static final int TIMES = Integer.getInteger("pages", 1);

    private static Path data;
    private static TestBoard board;
    private static final AtomicInteger ACCEPTED = new AtomicInteger();

    /** @param led to so many of its steps before the first move, all seats done with the one before */
    record Evening(Plan plan, int seats, int led, List<AnyMove> moves) { }

    @BeforeContainer static void open() throws IOException {
        data = Files.createTempDirectory("pages");
        board = new TestBoard(data, new TestClock(), StreamLimits.USUAL, new ViewMaker(
                new RoomCureClock((classId, room) -> RoomFit.untaught()), new PosteriorPaceWatch(), TestBoard.ZONE));
    }

    @AfterContainer static void close() throws IOException {
        board.close();
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        assertThat(ACCEPTED).as("most of what is tried is let stand").hasPositiveValue();
    }

    @Provide Arbitrary<List<Evening>> evenings() {
        return evening().list().ofSize(TIMES);
    }

    private static Arbitrary<Evening> evening() {
        Arbitrary<Plan> plans = Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.of(List.copyOf(StarterPlans.all()))),
                Tuple.of(1, AnyEvent.plan()));
        return Combinators.combine(plans, Arbitraries.integers().between(1, 8), Arbitraries.integers().between(0, 30),
                AnyMove.moves().list().ofMinSize(4).ofMaxSize(14 * TIMES)).as(Evening::new);
    }

    @Property(tries = 14, shrinking = ShrinkingMode.BOUNDED)
    void every_page_of_every_class_is_there_whatever_is_tapped(
            @ForAll("evenings") List<Evening> evenings) {
        evenings.forEach(EveryPageProperties::play);
    }

    private static void play(Evening evening) {
        String id = board.create(Json.text(Json.object().put("seats", evening.seats()).put("name", "Thursday")
                .set("plan", PlanFile.write(evening.plan()))));
        lead(id, evening);
        for (AnyMove move : evening.moves()) {
            board.testClock().advance(Duration.ofSeconds(move.pause()));
            long last = live(id).seq();
            ObjectNode command = move.command(evening.plan(), evening.seats(), last, board.clock.instant());
            Reply reply = board.tap(id, command);
            assertThat(reply.status()).as("%s: %s", command, reply.body()).isLessThan(500);
            if (reply.status() == 200) {
                ACCEPTED.incrementAndGet();
                EveryPage.render(board, id, 1 + move.seat() % evening.seats());
                requireWhole(id, command);
            }
        }
        board.tap(id, TestBoard.command("close"));
        EveryPage.render(board, id, 1);
        requireWhole(id, "closed");
    }

    private static LiveClass live(String id) {
        return board.boards().find(id).orElseThrow().live();
    }

    private static void lead(String id, Evening evening) {
        List<Step> steps = evening.plan().steps();
        for (Step step : steps.subList(0, Math.min(evening.led(), steps.size()))) {
            board.testClock().advanceMinutes(2);
            if (step.led()) {
                board.tap(id, TestBoard.opening(step.id().value()));
            }
            for (int seat = 1; seat <= evening.seats() && step.needsTap(); seat++) {
                board.tap(id, TestBoard.finish(seat, step.id().value()));
            }
        }
    }

    private static void requireWhole(String id, Object after) {
        assertThat(board.boards().unreadable()).as("after %s", Objects.toString(after)).doesNotContain(id);
        assertThat(board.boards().missing()).as("after %s", Objects.toString(after)).doesNotContainKey(id);
    }
}
