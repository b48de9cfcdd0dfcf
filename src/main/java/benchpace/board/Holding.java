package benchpace.board;

import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.util.List;
import java.util.Optional;

/** Who alone keeps the class from the next led step, or from the wait: read off the taps, so nothing is weighed. */
final class Holding {
    private Holding() { }

    /** The one candle-making seat that is not done with what comes before; empty if there are several, or none. */
    static Optional<SeatNumber> alone(LiveClass live) {
        int last = lastBeforeNext(live);
        if (last < 0) {
            return Optional.empty();
        }
        Progress progress = live.progress();
        List<SeatNumber> notDone = live.seats().stream().filter(Seat::makesCandle)
                .filter(seat -> progress.furthestFinished(seat) < last).map(Seat::number).toList();
        return notDone.size() == 1 ? Optional.of(notDone.get(0)) : Optional.empty();
    }

    /** The last step wanting a tap before the next led one, the pour at the latest; -1 if there is none. */
    private static int lastBeforeNext(LiveClass live) {
        Plan plan = live.plan();
        int pour = plan.pour().map(step -> plan.indexOf(step.id())).orElse(-1);
        int next = live.nextLed().map(step -> plan.indexOf(step.id())).orElse(plan.steps().size());
        int last = Math.min(next - 1, pour);
        while (last >= 0 && !plan.steps().get(last).needsTap()) {
            last--;
        }
        return last;
    }
}
