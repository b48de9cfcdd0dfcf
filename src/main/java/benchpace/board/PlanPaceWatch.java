package benchpace.board;

import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Pace by the plan's own figures: a seat is behind when it has been at its step longer than planned by more than the
 * plan's allowance, and the class ends when the slowest seat has had its planned time for all that is left.
 */
public final class PlanPaceWatch implements PaceWatch {

    @Override public Pace watch(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                Instant now) {
        Progress progress = live.progress();
        Map<SeatNumber, SeatFlag> flags = new TreeMap<>();
        List<Instant> changes = new ArrayList<>();
        for (Seat seat : live.seats()) {
            Standing standing = progress.standing(seat);
            if (standing.phase() != Standing.Phase.WORKING) {
                continue;
            }
            Step step = standing.step().orElseThrow();
            Duration over = progress.timeIn(seat, standing, now).minus(step.planned());
            if (over.compareTo(step.allowance()) > 0) {
                flags.put(seat.number(), flag(seat, step, over));
                changes.add(now.plus(Duration.ofMinutes(1)));
            } else {
                changes.add(now.plus(step.allowance()).minus(over).plusMillis(1));
            }
        }
        List<SeatNumber> urgent = flags.keySet().stream()
                .sorted(Comparator.comparing((SeatNumber s) -> -flags.get(s).minutesOver()).thenComparing(s -> s))
                .toList();
        return new Pace(flags, urgent, List.of(), home(live, clocks, now), Optional.empty(),
                changes.stream().min(Comparator.naturalOrder()));
    }

    private static SeatFlag flag(Seat seat, Step step, Duration over) {
        int minutes = (int) over.toMinutes();
        String reason = "Seat " + seat.number() + ": " + step.name() + ", " + minutes + " min over the plan.";
        return new SeatFlag(SeatFlag.Level.BEHIND, reason, minutes, minutes);
    }

    private static HomeTime home(LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now) {
        Instant latest = null;
        String driver = "";
        for (Seat seat : live.seats()) {
            if (!seat.makesCandle()) {
                continue;
            }
            CandleClock clock = clocks.get(seat.number());
            Instant ready = clock != null ? clock.ready().likely() : unpoured(live, seat, now);
            if (latest == null || ready.isAfter(latest)) {
                latest = ready;
                driver = "seat " + seat.number() + (clock == null ? ", then the cure" : "'s cure");
            }
        }
        Instant likely = latest == null ? now : latest;
        return new HomeTime(likely, likely, likely, live.startsAt().plus(live.plan().planned()), driver,
                "by the plan's figures");
    }

    /** What is left up to the pour, each step at its planned length, then the plan's cure. */
    private static Instant unpoured(LiveClass live, Seat seat, Instant now) {
        Plan plan = live.plan();
        Progress progress = live.progress();
        Standing standing = progress.standing(seat);
        int from = standing.step().map(s -> plan.indexOf(s.id())).orElse(plan.steps().size());
        Duration left = Duration.ZERO;
        for (Step step : plan.steps().subList(Math.min(from, plan.steps().size()), plan.steps().size())) {
            left = left.plus(step.planned());
            if (step.kind() == StepKind.CURE) {
                break;
            }
        }
        boolean atIt = standing.phase() == Standing.Phase.WORKING || standing.phase() == Standing.Phase.LISTENING;
        Duration spent = atIt ? progress.timeIn(seat, standing, now) : Duration.ZERO;
        Duration planned = standing.step().map(Step::planned).orElse(Duration.ZERO);
        Duration saved = spent.compareTo(planned) < 0 ? spent : planned;
        Instant begin = now.isBefore(live.startsAt()) ? live.startsAt() : now;
        return begin.plus(left).minus(saved);
    }
}
