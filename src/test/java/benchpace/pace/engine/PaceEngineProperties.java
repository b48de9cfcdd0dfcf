package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceView;
import benchpace.pace.SeatPace;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.Tap;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.forecast.Forecast;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What holds for every class, whatever its guests and its taps do. */
class PaceEngineProperties {
    private static final int TRIES = 12;
    private final PaceEngine engine = new PaceEngine(PacePriors.standard());

    private static ClassTrack whole(long seed, int seats) throws Exception {
        ClassSimulator.Habit[] habits = {ClassSimulator.Habit.USUAL, ClassSimulator.Habit.GAMMA,
            ClassSimulator.Habit.BUNCHED};
        ClassSimulator.Simulated class1 = ClassSimulator.simulate("any", seats, habits[(int) (seed % 3)], seed);
        ClassLog log = ClassLogReader.read("any", new StringReader(String.join("\n", class1.lines())));
        TrackFold fold = new TrackFold(log);
        log.events().forEach(fold::apply);
        return fold.track();
    }

    private static ClassTrack replaceSeats(ClassTrack track, List<SeatTrack> seats) {
        return new ClassTrack(track.steps(), track.openedMinutes(), track.cureMinutes(), seats);
    }

    private PaceView view(ClassTrack track, double now) {
        return engine.judge(track, now, engine.remember(track, now, PaceMemory.EMPTY));
    }

    @Property(tries = TRIES)
    void a_memory_kept_and_a_memory_made_anew_are_the_same(@ForAll @LongRange(max = 9999) long seed,
                                                           @ForAll @IntRange(min = 2, max = 9) int seats)
            throws Exception {
        ClassTrack whole = whole(seed, seats);
        PaceMemory kept = PaceMemory.EMPTY;
        ClassTrack before = whole.asOf(0);
        double beforeMinutes = 0;
        for (double moment : whole.moments()) {
            if (moment > 25) {
                break;
            }
            ClassTrack now = whole.asOf(moment);
            kept = engine.follow(before, kept, now, moment);
            before = now;
            beforeMinutes = moment;
        }
        assertThat(kept).isEqualTo(engine.remember(before, beforeMinutes, PaceMemory.EMPTY));
    }

    @Property(tries = TRIES)
    void undoing_a_tap_restores_the_earlier_judgement(@ForAll @LongRange(max = 9999) long seed,
                                                      @ForAll @IntRange(min = 2, max = 8) int seats,
                                                      @ForAll @DoubleRange(min = 5, max = 25) double now)
            throws Exception {
        ClassTrack track = whole(seed, seats).asOf(now);
        PaceMemory memory = engine.remember(track, now, PaceMemory.EMPTY);
        PaceView earlier = engine.judge(track, now, memory);
        SeatTrack first = track.seats().get(0);
        List<Tap> taps = new ArrayList<>(first.taps());
        taps.add(new Tap(track.pourStep(), now, false));
        List<SeatTrack> tapped = new ArrayList<>(track.seats());
        tapped.set(0, new SeatTrack(first.seat(), first.party(), first.sharesCandle(), first.arrivedMinutes(),
                first.leftMinutes(), first.pauses(), taps, first.stillAtIt(), first.hints(), first.claims(),
                first.setMinutes(), first.ready()));
        ClassTrack wrong = replaceSeats(track, tapped);
        PaceMemory misled = engine.follow(track, memory, wrong, now + 0.7);
        PaceMemory restored = engine.follow(wrong, misled, track, now + 0.7);
        assertThat(restored).isEqualTo(engine.remember(track, now + 0.7, PaceMemory.EMPTY));
        assertThat(engine.judge(track, now, engine.remember(track, now, PaceMemory.EMPTY))).isEqualTo(earlier);
    }

    @Property(tries = TRIES)
    void what_was_remembered_before_the_past_changed_is_not_made_anew(@ForAll @LongRange(max = 9999) long seed,
                                                                      @ForAll @IntRange(min = 2, max = 8) int seats)
            throws Exception {
        ClassTrack track = whole(seed, seats).asOf(25);
        PaceMemory memory = engine.remember(track, 25, PaceMemory.EMPTY);
        double changed = track.moments().get(track.moments().size() - 1);

        PaceMemory anew = engine.follow(track, memory, track.asOf(changed - 0.01), 25);

        assertThat(memories(memory).stream().filter(m -> m.tick() * PaceEngine.TICK_MINUTES < changed - 0.01))
                .allMatch(before -> memories(anew).stream().anyMatch(m -> m == before));
    }

    @Property(tries = TRIES)
    void renumbering_seats_renumbers_flags(@ForAll @LongRange(max = 9999) long seed,
                                           @ForAll @IntRange(min = 2, max = 8) int seats,
                                           @ForAll @DoubleRange(min = 8, max = 25) double now) throws Exception {
        ClassTrack track = whole(seed, seats).asOf(now);
        List<SeatTrack> renumbered = track.seats().stream().map(s -> new SeatTrack(100 - s.seat(), s.party(),
                s.sharesCandle(), s.arrivedMinutes(), s.leftMinutes(), s.pauses(), s.taps(), s.stillAtIt(), s.hints(),
                s.claims(), s.setMinutes(), s.ready())).toList();
        PaceView plain = view(track, now);
        PaceView other = view(replaceSeats(track, renumbered), now);
        for (int i = 0; i < plain.seats().size(); i++) {
            SeatPace a = plain.seats().get(i);
            SeatPace b = other.seats().get(i);
            assertThat(b.seat()).isEqualTo(100 - a.seat());
            assertThat(b.level()).isEqualTo(a.level());
            assertThat(b.stalledProbability()).isEqualTo(a.stalledProbability());
        }
    }

    @Property(tries = TRIES)
    void the_order_seats_are_listed_in_does_not_matter(@ForAll @LongRange(max = 9999) long seed,
                                                       @ForAll @DoubleRange(min = 8, max = 25) double now)
            throws Exception {
        ClassTrack track = whole(seed, 6).asOf(now);
        List<SeatTrack> reversed = new ArrayList<>(track.seats());
        java.util.Collections.reverse(reversed);
        Map<Integer, SeatPace> plain = new HashMap<>();
        view(track, now).seats().forEach(s -> plain.put(s.seat(), s));
        for (SeatPace seat : view(replaceSeats(track, reversed), now).seats()) {
            assertThat(seat.stalledProbability()).isCloseTo(plain.get(seat.seat()).stalledProbability(),
                    within(1e-9));
            assertThat(seat.level()).isEqualTo(plain.get(seat.seat()).level());
        }
    }

    @Property(tries = TRIES)
    void mere_waiting_never_lowers_suspicion_nor_level(@ForAll @LongRange(max = 9999) long seed,
                                                       @ForAll @IntRange(min = 2, max = 8) int seats,
                                                       @ForAll @DoubleRange(min = 5, max = 25) double from)
            throws Exception {
        ClassTrack track = whole(seed, seats).asOf(from);
        PaceMemory memory = engine.remember(track, from, PaceMemory.EMPTY);
        for (double now = from + 0.5; now < from + 15; now += 0.5) {
            PaceMemory later = engine.remember(track, now, memory);
            for (SeatTrack seat : track.seats()) {
                PaceMemory.SeatMemory a = memory.seat(seat.seat());
                PaceMemory.SeatMemory b = later.seat(seat.seat());
                if (a.step() == b.step() && memory.events() == later.events() && memory.tick() >= 0) {
                    assertThat(b.suspicion()).isGreaterThanOrEqualTo(a.suspicion());
                    assertThat(b.level()).isGreaterThanOrEqualTo(a.level());
                }
            }
            memory = later;
        }
    }

    @Property(tries = TRIES)
    void a_paused_seat_is_never_flagged(@ForAll @LongRange(max = 9999) long seed,
                                        @ForAll @IntRange(min = 2, max = 8) int seats,
                                        @ForAll @DoubleRange(min = 2, max = 30) double from) throws Exception {
        ClassTrack track = whole(seed, seats);
        SeatTrack first = track.seats().get(0);
        List<SeatTrack> paused = new ArrayList<>(track.seats());
        List<Tap> taps = first.taps().stream().filter(t -> t.atMinutes() <= from).toList();
        paused.set(0, new SeatTrack(first.seat(), first.party(), first.sharesCandle(), first.arrivedMinutes(),
                first.leftMinutes(), List.of(new Span(from, from + 15)), taps, List.of(), List.of(), List.of(),
                SeatTrack.NOT_YET, first.ready()));
        ClassTrack with = replaceSeats(track, paused);
        PaceMemory memory = PaceMemory.EMPTY;
        for (double now = Math.floor(from); now < from + 15; now += 0.5) {
            memory = engine.remember(with.asOf(now), now, memory);
            if (now >= from) {
                assertThat(engine.levels(with.asOf(now), now, memory).get(first.seat())).isEqualTo(Level.NONE);
            }
        }
    }

    @Property(tries = TRIES)
    void a_level_changes_at_most_once_a_minute_unless_something_happens_at_the_seat(
            @ForAll @LongRange(max = 9999) long seed, @ForAll @IntRange(min = 4, max = 12) int seats)
            throws Exception {
        ClassTrack whole = whole(seed, seats);
        PaceMemory memory = PaceMemory.EMPTY;
        Map<Integer, Double> changed = new HashMap<>();
        Map<Integer, Level> shown = new HashMap<>();
        Map<Integer, SeatTrack> records = new HashMap<>();
        for (double now = 0; now < 45; now += 0.25) {
            ClassTrack track = whole.asOf(now);
            memory = engine.remember(track, now, memory);
            Map<Integer, Level> levels = engine.levels(track, now, memory);
            for (SeatTrack seat : track.seats()) {
                Level level = levels.get(seat.seat());
                Level before = shown.put(seat.seat(), level);
                boolean event = !seat.equals(records.put(seat.seat(), seat));
                if (event) {
                    changed.remove(seat.seat());
                } else if (before != level) {
                    Double last = changed.put(seat.seat(), now);
                    assertThat(last == null || now - last >= 1).as("seat %d at %s", seat.seat(), now).isTrue();
                }
            }
        }
    }

    @Property(tries = TRIES)
    void there_are_two_minutes_to_answer_the_question_before_a_red_that_is_not_certain(
            @ForAll @LongRange(max = 9999) long seed, @ForAll @IntRange(min = 4, max = 16) int seats)
            throws Exception {
        ClassTrack whole = whole(seed, seats);
        PaceMemory memory = PaceMemory.EMPTY;
        for (double now = 0; now < 60; now += PaceEngine.TICK_MINUTES) {
            ClassTrack track = whole.asOf(now);
            PaceMemory before = memory;
            memory = engine.remember(track, now, memory);
            Evaluation evaluation = new Evaluation(track, now, PacePriors.standard());
            for (int i = 0; i < track.seats().size(); i++) {
                int number = track.seats().get(i).seat();
                PaceMemory.SeatMemory was = before.seat(number);
                PaceMemory.SeatMemory is = memory.seat(number);
                if (is.level() == Level.BEHIND && was.level() != Level.BEHIND) {
                    boolean asked = was.level() == Level.SLIPPING && memory.tick() - was.changedTick() >= 4;
                    boolean certain = is.suspicion() >= 0.5 || evaluation.claimed(i) || evaluation.holder() == i
                            && evaluation.overMinutes(i) >= 15;
                    assertThat(asked || certain).as("seat %d at %s of class %d", number, now, seed).isTrue();
                }
            }
        }
    }

    @Property(tries = TRIES)
    void probabilities_add_up_and_forecasts_are_ordered(@ForAll @LongRange(max = 9999) long seed,
                                                        @ForAll @IntRange(min = 1, max = 24) int seats,
                                                        @ForAll @DoubleRange(min = 0, max = 90) double now)
            throws Exception {
        ClassTrack track = whole(seed, seats).asOf(now);
        for (SeatPace seat : view(track, now).seats()) {
            assertThat(seat.stalledProbability()).isBetween(0.0, 1.0);
            assertThat(seat.forgottenProbability()).isBetween(0.0, 1.0 - seat.stalledProbability() + 1e-9);
            assertThat(seat.priceMinutes()).isNotNegative();
            assertThat(seat.savedMinutes()).isNotNegative();
        }
        Forecast forecast = engine.forecast(track, now);
        assertThat(forecast.p10()).isLessThanOrEqualTo(forecast.p50());
        assertThat(forecast).isEqualTo(engine.forecast(track, now));
    }

    /** The memories that one could go back to from there, the latest first. */
    private static List<PaceMemory> memories(PaceMemory last) {
        return Stream.iterate(last.earlier(), Optional::isPresent, m -> m.get().earlier()).map(Optional::get).toList();
    }
}
