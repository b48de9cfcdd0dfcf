package benchpace.board.pacing;

import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.StationTurns;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Whose turn it is at a step that serves only some seats at once, as far as taps tell: who came first is the first. The
 * same turns that seats are judged by.
 *
 * @param step    the step
 * @param what    what serves the seats, in the plan's words
 * @param served  the seats believed to be at it, by the beginning of their turns
 * @param waiting the seats that wait for their turn, the next one first
 * @param through when all of them have had it, if each takes as long as planned
 * @param began   since when each seat that is not through with the step has had its turn
 */
public record TurnsAt(Step step, String what, List<Integer> served, List<Integer> waiting, Instant through,
                      Map<Integer, Instant> began) {
    public TurnsAt {
        began = Map.copyOf(began);
        served = List.copyOf(served);
        waiting = List.copyOf(waiting);
    }

    /** How many seats have their turn before that one; empty if it does not wait here. */
    public Optional<Integer> before(int seat) {
        int place = waiting.indexOf(seat);
        return place < 0 ? Optional.empty() : Optional.of(place);
    }

    /** Every step with stations to which somebody has come, in the plan's order. */
    public static List<TurnsAt> of(LiveClass live, Instant now) {
        boolean nobody = live.seats().stream().noneMatch(seat -> mayHaveCome(live.plan(), seat));
        return live.closedAt().isPresent() || nobody ? List.of() : replayed(live, now);
    }

    /** The same by going through all that happened, whether anybody has come or not. */
    static List<TurnsAt> replayed(LiveClass live, Instant now) {
        Plan plan = live.plan();
        Instant origin = ClassTracks.origin(live);
        double minutes = ClassTracks.minutes(origin, now);
        ClassTrack track = ClassTracks.of(live, Map.of());
        Map<Integer, StationTurns> judged = StationTurns.atSteps(track, minutes);
        List<TurnsAt> all = new ArrayList<>();
        for (int k = 0; k < plan.steps().size(); k++) {
            Step step = plan.steps().get(k);
            if (step.stations().isPresent()) {
                StationTurns turns = k <= track.pourStep() ? judged.get(k) : afterPour(live, k, origin, minutes);
                if (turns != null && !(turns.began().isEmpty() && turns.waiting().isEmpty())) {
                    all.add(of(step, turns, origin));
                }
            }
        }
        return all;
    }

    /** Whether the step a seat has come to, or any after the pour that it may have, serves only some seats at once. */
    private static boolean mayHaveCome(Plan plan, Seat seat) {
        int furthest = seat.finishes().keySet().stream().mapToInt(plan::indexOf).max().orElse(-1);
        for (Step step : plan.steps().subList(furthest + 1, plan.steps().size())) {
            if (step.stations().isPresent()) {
                return true;
            }
            if (step.needsTap() && step.kind() != StepKind.CURE && step.kind() != StepKind.FINISH) {
                return false; // it is at this one, and at none behind it
            }
        }
        return false;
    }

    private static TurnsAt of(Step step, StationTurns turns, Instant origin) {
        Map<Integer, Instant> began = new TreeMap<>();
        turns.began().forEach((seat, minutes) -> began.put(seat, PosteriorPaceWatch.instant(origin, minutes)));
        return new TurnsAt(step, step.stations().orElseThrow().what(), turns.served(), turns.waiting(),
                PosteriorPaceWatch.instant(origin, turns.throughMinutes()), began);
    }

    /** Behind the pour no seat is judged, and yet they wait. */
    private static StationTurns afterPour(LiveClass live, int k, Instant origin, double now) {
        PaceStep step = PaceStep.of(live.plan().steps().get(k));
        PaceStations stations = step.stations().orElseThrow();
        List<StationTurns.Guest> guests = new ArrayList<>();
        for (Seat seat : live.seats()) {
            came(live, seat, k).map(at -> ClassTracks.minutes(origin, at)).filter(at -> at <= now)
                    .ifPresent(at -> guests.add(guest(live, seat, k, at, origin)));
        }
        return StationTurns.of(stations, step.planMinutes(), guests, now);
    }

    private static StationTurns.Guest guest(LiveClass live, Seat seat, int k, double came, Instant origin) {
        double done = doneAt(live, seat, k).map(at -> ClassTracks.minutes(origin, at)).orElse(SeatTrack.NOT_YET);
        double left = seat.present() ? SeatTrack.NOT_YET : ClassTracks.minutes(origin, seat.presenceSince());
        List<Span> pauses = seat.pauses().stream().map(p -> new Span(ClassTracks.minutes(origin, p.from()),
                p.until().map(at -> ClassTracks.minutes(origin, at)).orElse(SeatTrack.NOT_YET))).toList();
        return new StationTurns.Guest(seat.number().value(), Math.min(came, done), done, left, pauses);
    }

    /** When it was ticked for the step, or else for one after it. */
    private static Optional<Instant> doneAt(LiveClass live, Seat seat, int k) {
        return seat.finishes().entrySet().stream().filter(f -> live.plan().indexOf(f.getKey()) >= k)
                .map(f -> f.getValue().at()).min(Comparator.naturalOrder());
    }

    /** When it could have begun the step, had nobody been before it; empty if it has not come to it. */
    private static Optional<Instant> came(LiveClass live, Seat seat, int k) {
        Progress progress = live.progress();
        Standing standing = progress.standing(seat);
        boolean there = standing.step().filter(s -> live.plan().indexOf(s.id()) == k && progress.isOpen(s)).isPresent()
                && standing.phase() != Standing.Phase.LISTENING;
        if (!seat.makesCandle() || !there && doneAt(live, seat, k).isEmpty()) {
            return Optional.empty();
        }
        if (standing.phase() == Standing.Phase.WORKING && there) {
            return Optional.of(standing.since());
        }
        Stream<Instant> earlier = seat.finishes().entrySet().stream()
                .filter(f -> live.plan().indexOf(f.getKey()) < k).map(f -> f.getValue().at());
        Stream<Instant> opened = live.openedAt(live.plan().steps().get(k).id()).stream();
        Stream<Instant> set = progress.settledAt(seat).stream();
        return Stream.of(earlier, opened, set).flatMap(s -> s).max(Comparator.naturalOrder());
    }
}
