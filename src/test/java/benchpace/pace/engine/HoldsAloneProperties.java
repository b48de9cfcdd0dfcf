package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceView;
import benchpace.pace.ReadyOutlook;
import benchpace.pace.SeatPace;
import benchpace.pace.SeatTrack;
import benchpace.pace.Tap;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.forecast.Posterior;
import benchpace.pace.forecast.PourDraws;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** All but one seat are through with what is open, and that one is long over its time: everything must name it. */
class HoldsAloneProperties {
    private static final int TRIES = 12;
    private static final int LONG_OVER = 18;
    /** So many that chance moves the mean of the last pour by a few seconds only; the tile makes do with fewer. */
    private static final int MANY_DRAWS = 2000;
    private final PaceEngine engine = new PaceEngine(PacePriors.standard());

    private static ClassTrack whole(long seed, int seats) throws Exception {
        ClassSimulator.Habit[] habits = {ClassSimulator.Habit.USUAL, ClassSimulator.Habit.GAMMA,
            ClassSimulator.Habit.BUNCHED, ClassSimulator.Habit.PROMPT};
        ClassSimulator.Simulated class1 = ClassSimulator.simulate("any", seats, habits[(int) (seed % 4)], seed);
        ClassLog log = ClassLogReader.read("any", new StringReader(String.join("\n", class1.lines())));
        TrackFold fold = new TrackFold(log);
        log.events().forEach(fold::apply);
        return fold.track();
    }

    /** The class as it would have been had one seat never come through a step and the rest waited for it. */
    private static ClassTrack heldBy(ClassTrack class1, int stuck, int step) {
        int next = step + 1;
        while (next < class1.steps().size() && !class1.steps().get(next).led()) {
            next++;
        }
        int closed = next;
        List<Double> opened = new ArrayList<>(class1.openedMinutes());
        for (int k = closed; k < opened.size(); k++) {
            opened.set(k, class1.steps().get(k).led() ? SeatTrack.NOT_YET : opened.get(k));
        }
        List<SeatTrack> seats = new ArrayList<>();
        for (SeatTrack seat : class1.seats()) {
            int through = seat.seat() == stuck ? step : Math.min(closed, class1.pourStep() + 1);
            List<Tap> taps = new ArrayList<>(seat.taps().stream().filter(t -> t.step() < through).toList());
            if (seat.seat() != stuck && taps.stream().noneMatch(t -> t.step() == through - 1)) {
                taps.add(new Tap(through - 1, seat.taps().isEmpty() ? 30
                        : seat.taps().get(seat.taps().size() - 1).atMinutes(), false));
            }
            seats.add(new SeatTrack(seat.seat(), seat.party(), seat.sharesCandle(), seat.arrivedMinutes(),
                    SeatTrack.NOT_YET, List.of(), taps, List.of(), List.of(), List.of(), SeatTrack.NOT_YET,
                    ReadyOutlook.UNKNOWN));
        }
        return new ClassTrack(class1.steps(), opened, class1.cureMinutes(), seats);
    }

    private PaceView view(ClassTrack track, double now) {
        return engine.judge(track.asOf(now), now, engine.remember(track, now, PaceMemory.EMPTY));
    }

    /** E[last pour of all] - E[last without it], as the price is defined: over its being done already, too. */
    private static double expectedDelay(ClassTrack track, double now, int seat) {
        Evaluation e = new Evaluation(track, now, PacePriors.standard());
        PourDraws draws = new PourDraws(new Posterior(track, e.seats, e.odds, e.tempo, e.openings, e.priors, now),
                MANY_DRAWS, Evaluation.SEED);
        return draws.meanLastPour() - draws.meanLastPourWithout(seat);
    }

    /**
     * A seat that goes on costs everybody two minutes at the least. Its price is an expectation, over its being done
     * and not ticked too, so where that is likely the same two minutes weigh as much less as it is likely.
     */
    @Property(tries = TRIES)
    void flag_price_and_home_time_name_the_seat_that_alone_holds_the_open_step(
            @ForAll @LongRange(max = 9999) long seed, @ForAll @IntRange(min = 2, max = 40) int seats,
            @ForAll @IntRange(min = 0, max = 4) int step) throws Exception {
        int stuck = 1 + (int) (seed % seats);
        ClassTrack track = heldBy(whole(seed, seats), stuck, step);
        double settled = track.moments().get(track.moments().size() - 1);
        int last = 0;
        int first = -1;
        for (double now = Math.ceil(settled) + 20; now <= settled + 70; now += 10) {
            PaceView view = view(track, now);
            SeatPace seat = view.seats().get(stuck - 1);
            if (seat.overMinutes() < LONG_OVER) {
                continue;
            }
            String then = "seat " + stuck + " of " + seats + ", class " + seed + ", minute " + now + ": " + seat;
            assertThat(seat.level()).as(then).isEqualTo(Level.BEHIND);
            assertThat(view.inNeed().get(0).seat()).as(then).isEqualTo(stuck);
            assertThat(view.seats()).as(then).allMatch(s -> s.seat() == stuck || s.priceMinutes() == 0);
            assertThat(engine.forecast(track.asOf(now), now).driverSeat()).as(then).isEqualTo(stuck);
            double notDone = 1 - seat.forgottenProbability();
            assertThat(seat.priceMinutes()).as(then)
                    .isGreaterThanOrEqualTo(Math.max((int) Math.round(2 * notDone), last - 2));
            if (seat.priceMinutes() < 2) {
                assertThat(expectedDelay(track.asOf(now), now, stuck - 1) / notDone).as("if it goes on, " + then)
                        .isGreaterThanOrEqualTo(2);
            }
            last = seat.priceMinutes();
            first = first < 0 ? last : first;
        }
        assertThat(last).as("longer stalls cost more: class %d, seat %d", seed, stuck).isGreaterThan(first);
    }
}
