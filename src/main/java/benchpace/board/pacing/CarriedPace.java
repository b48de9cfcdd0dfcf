package benchpace.board.pacing;

import benchpace.board.cooling.CandleClock;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.live.Standing.Phase;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What of a judgement still holds after more events, before the class is judged anew: never more than was judged. What
 * was said of a seat holds as long as the seat is at the same step and nobody has answered for it since.
 */
public final class CarriedPace {
    private final Pace judged;
    private final LiveClass then;
    private final LiveClass live;
    private final Progress progressThen;
    private final Progress progress;

    private CarriedPace(Pace judged, LiveClass then, LiveClass live) {
        this.judged = judged;
        this.then = then;
        this.live = live;
        this.progressThen = then.progress();
        this.progress = live.progress();
    }

    /**
     * @param judged of the class {@code then}
     * @param live   the class with more events, or with some taken back
     * @param clocks of its candles, as far as they are known
     */
    public static Pace of(Pace judged, LiveClass then, LiveClass live, Map<SeatNumber, CandleClock> clocks,
                          Instant now) {
        if (live.closedAt().isPresent() || then.closedAt().isPresent()) {
            return Pace.unjudged(HomeTimes.promised(live, clocks, now));
        }
        return new CarriedPace(judged, then, live).pace(now);
    }

    private Pace pace(Instant now) {
        Map<SeatNumber, SeatFlag> flags = new TreeMap<>();
        Map<SeatNumber, Eased> eased = new TreeMap<>();
        judged.eased().forEach((seat, was) -> {
            if (isWhereItWas(seat)) {
                eased.put(seat, was);
            }
        });
        judged.flags().forEach((seat, flag) -> {
            Optional<Recorded> sorted = sortedSince(seat);
            if (sorted.isPresent() && isWhereItWas(seat)) {
                eased.put(seat, new Eased(flag, SeatEvents.helper(sorted.get()), sorted.get().at()));
            } else if (holds(seat, flag)) {
                flags.put(seat, flag);
            }
        });
        return new Pace(flags, eased, judged.mostUrgent().stream().filter(flags::containsKey).toList(), unticked(),
                HomeTimes.carried(judged.home(), live, this::isWhereItWas, now), Optional.empty(),
                judged.nextChange());
    }

    /** A question is answered by "still at it", a seat that is behind stays so. */
    private boolean holds(SeatNumber seat, SeatFlag flag) {
        return isWhereItWas(seat) && (flag.level() == SeatFlag.Level.BEHIND || answers(then, seat)
                .equals(answers(live, seat)));
    }

    private static List<Seat.Answer> answers(LiveClass of, SeatNumber seat) {
        return of.seat(seat).map(Seat::stillAt).orElse(List.of());
    }

    private Optional<Recorded> sortedSince(SeatNumber seat) {
        return SeatEvents.lastSorted(live, seat).filter(r -> r.seq() > then.seq());
    }

    /** What the next led step leaves behind was judged for that step. */
    private List<Pace.Unticked> unticked() {
        return live.nextLed().equals(then.nextLed())
                ? judged.unticked().stream().filter(u -> isWhereItWas(u.seat())).toList() : List.of();
    }

    private boolean isWhereItWas(SeatNumber seat) {
        Optional<Standing> was = then.seat(seat).map(progressThen::standing);
        Optional<Standing> is = live.seat(seat).map(progress::standing);
        return is.filter(s -> s.phase() != Phase.LEFT && was.filter(w -> w.phase() == s.phase()
                && w.step().map(Step::id).equals(s.step().map(Step::id))).isPresent()).isPresent();
    }
}
