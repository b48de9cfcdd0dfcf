package benchpace.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.board.Boards;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.playback.Mark;
import benchpace.board.playback.Playback;
import benchpace.board.playback.PlaybackModels;
import benchpace.board.playback.Playbacks;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the screens of an evening played back show, against what the {@code replay} command finds in its log. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlayedBackTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final double MILLIS = 100;

    private final AtomicReference<Duration> passing = new AtomicReference<>(Duration.ZERO);
    private final Boards boards = new Boards(new MemoryLog(), new SimulatedClock(TestClass.START),
            new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZONE), () -> "none");
    private final Playbacks playbacks = new Playbacks(boards, of -> new PlaybackModels(new PlanCureClock(),
            PosteriorPaceWatch::new, ZONE), () -> "test", passing::get);

    @AfterEach void close() {
        playbacks.close();
        boards.close();
    }

    /** Something that happens at a whole second, so that the log's own rounding changes nothing. */
    private record Doing(long second, Consumer<TestClass> action) { }

    /** A table at which nobody is like another: slow ones, forgotten ticks, answers, pauses. */
    private static LiveClass evening(long seed) {
        Random random = new Random(seed);
        int seats = 3 + random.nextInt(7);
        List<Doing> doings = new ArrayList<>();
        long wicks = 240 + random.nextInt(120);
        long pour = wicks + 900 + random.nextInt(420);
        doings.add(new Doing(30, c -> c.open("welcome")));
        doings.add(new Doing(wicks, c -> c.open("wicks")));
        doings.add(new Doing(pour, c -> c.open("pour")));
        for (int seat = 1; seat <= seats; seat++) {
            int at = seat;
            double pace = Math.exp(0.45 * random.nextGaussian());
            long wicked = wicks + 5 + Math.round(360 * pace * Math.exp(0.2 * random.nextGaussian()));
            long blended = wicked + Math.round(480 * pace * Math.exp(0.2 * random.nextGaussian()));
            long poured = Math.max(pour, blended) + Math.round(500 * pace * Math.exp(0.2 * random.nextGaussian()));
            boolean ticked = random.nextInt(6) > 0; // else it is forgotten
            if (ticked) {
                doings.add(new Doing(wicked, c -> c.finish(at, "wicks")));
            }
            if (random.nextInt(4) == 0 && blended > wicked + 120) {
                doings.add(new Doing(wicked + 60, c -> c.pause(at)));
                doings.add(new Doing(wicked + 90, c -> c.resume(at)));
            }
            if (random.nextInt(3) == 0 && ticked && blended > wicked + 120) {
                doings.add(new Doing(blended - 20, c -> c.wish(new ClassEvent.StillWorking(new SeatNumber(at),
                        new StepId("blend")))));
            }
            doings.add(new Doing(blended, c -> c.finish(at, "blend")));
            doings.add(new Doing(poured, c -> c.finish(at, "pour")));
        }
        doings.sort(Comparator.comparingLong(Doing::second));
        TestClass played = TestClass.of(TestPlans.evening(), seats);
        doings.forEach(d -> d.action().accept(played.minute(d.second() / 60.0)));
        return played.live();
    }

    private static Instant at(double second) {
        return TestClass.START.plusMillis(Math.round(second * 1_000));
    }

    /** Seat to level at an instant, of the rows of the command's table. */
    private static Map<Integer, String> levels(List<String[]> rows, Instant now) {
        Map<Integer, String> levels = new TreeMap<>();
        rows.stream().filter(row -> !at(Double.parseDouble(row[2])).isAfter(now))
                .forEach(row -> levels.put(Integer.parseInt(row[1]), row[3]));
        levels.values().removeIf("none"::equals);
        return levels;
    }

    private static Map<Integer, String> shown(ClassView view) {
        return view.help().stream().collect(Collectors.toMap(ClassView.HelpView::seat,
                h -> h.flag().level().name().toLowerCase(Locale.ROOT), (a, b) -> a, TreeMap::new));
    }

    private Playback opened(LiveClass live) {
        Playback playback = playbacks.open(live.log(), "tablet");
        playback.set(new Playback.Wish(Optional.empty(), Optional.of(Playback.FASTEST), Optional.empty()));
        return playback;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void at_60_times_its_speed_every_screen_has_the_flags_that_a_replay_has(long seed) {
        LiveClass live = evening(seed);
        Replay.Tables tables = Replay.tables(live, live.lastRecordedAt().plusSeconds(60));
        Playback playback = opened(live);
        Random random = new Random(seed);
        int looks = 0;

        while (!playback.playing().orElseThrow().ended()) {
            ClassView view = playback.view();
            assertThat(shown(view)).as("at " + view.now()).isEqualTo(levels(tables.flags(), view.now()));
            looks++;
            passing.updateAndGet(t -> t.plusMillis(100 + random.nextInt(1_000)));
        }
        assertThat(looks).isGreaterThan(30);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void moved_back_from_its_end_it_foretells_what_a_replay_foretells(long seed) {
        LiveClass live = evening(seed);
        Replay.Tables tables = Replay.tables(live, live.lastRecordedAt().plusSeconds(60));
        Playback playback = opened(live);
        List<String[]> rows = new ArrayList<>(tables.forecasts());
        Collections.reverse(rows);
        assertThat(rows).hasSizeGreaterThan(4);

        for (String[] row : rows) {
            Instant moment = at(Double.parseDouble(row[1]));
            playback.set(new Playback.Wish(Optional.of(moment), Optional.empty(), Optional.of(true)));
            ClassView view = playback.view();
            assertThat(view.now()).isEqualTo(moment);
            List<Instant> said = List.of(view.home().p10(), view.home().p50(), view.home().p90());
            for (int i = 0; i < said.size(); i++) {
                assertThat((double) said.get(i).toEpochMilli()).as("p at " + moment)
                        .isCloseTo(at(Double.parseDouble(row[2 + i])).toEpochMilli(), within(MILLIS));
            }
        }
    }

    /** Each time a seat came to a level other than none. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_marks_on_its_bar_stand_where_a_replay_raises_flags(long seed) {
        LiveClass live = evening(seed);
        Replay.Tables tables = Replay.tables(live, live.lastRecordedAt().plusSeconds(60));

        List<String> marked = opened(live).marks().stream().filter(Mark.Flagged.class::isInstance)
                .map(Mark.Flagged.class::cast)
                .map(f -> f.at() + " " + f.seat() + " " + (f.behind() ? "behind" : "slipping")).sorted().toList();

        assertThat(marked).isEqualTo(tables.flags().stream().filter(row -> !row[3].equals("none"))
                .map(row -> at(Double.parseDouble(row[2])) + " " + row[1] + " " + row[3]).sorted().toList());
        assertThat(seed == 1 && marked.isEmpty()).as("somebody is slow").isFalse();
    }
}
