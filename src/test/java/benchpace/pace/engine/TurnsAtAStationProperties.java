package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.Tap;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What holds at a step with stations, whatever its guests and its taps do. */
class TurnsAtAStationProperties {
    /**
     * However it is ticked: of those that are not ticked at the pour, only as many as there are stations may be called,
     * the first that came; reckoned here without the queue.
     */
    @Property(tries = 30)
    void nobody_is_called_who_could_not_have_been_served_yet(@ForAll @LongRange(max = 9999) long seed,
            @ForAll @IntRange(min = 3, max = 12) int seats, @ForAll @IntRange(min = 1, max = 3) int atOnce) {
        ClassSimulator.Habit[] habits = {ClassSimulator.Habit.USUAL, ClassSimulator.Habit.BUNCHED,
            ClassSimulator.Habit.PROMPT};
        ClassTrack whole = TurnsAtAStationTest.invented(seats, habits[(int) (seed % 3)],
                new PaceStations(atOnce, 3), seed);
        TurnsAtAStationTest.play(whole, 60, (seat, level, now, track) -> {
            int pour = track.pourStep();
            List<SeatProgress> all = track.seats().stream().map(s -> SeatProgress.of(track, s, now)).toList();
            if (all.get(seat - 1).step() != pour) {
                return;
            }
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                SeatTrack other = track.seats().get(i);
                boolean away = other.pauses().stream().anyMatch(p -> p.covers(now)) || !other.isHere(now);
                if (all.get(i).step() == pour && !away) {
                    order.add(i);
                }
            }
            long before = order.stream().filter(i -> i != seat - 1)
                    .filter(i -> came(track, i) < came(track, seat - 1)).count();
            assertThat(before).as("seat %d at %s", seat, now).isLessThan(atOnce);
        });
    }

    /** When the seat was through with the step before the pour, or that opened. */
    private static double came(ClassTrack track, int i) {
        double tapped = track.seats().get(i).taps().stream().mapToDouble(Tap::atMinutes).max().orElse(0);
        double opened = track.steps().get(track.pourStep()).led() ? track.openedMinutes().get(track.pourStep()) : 0;
        return Math.max(Math.max(tapped, opened), track.seats().get(i).arrivedMinutes());
    }
}
