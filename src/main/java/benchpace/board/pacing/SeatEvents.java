package benchpace.board.pacing;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.pace.Mark;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What only the events of one seat tell, and not what they left behind: when its guest came, what guests said of
 * themselves, and when helpers were there.
 *
 * @param arrivedMinutes the first arrival told, or 0
 * @param claims         from "I've got it" to "sorted", or to the tap that moved the seat on
 */
record SeatEvents(double arrivedMinutes, List<Mark> hints, List<Span> claims) {
    private static final double NOT_YET = SeatTrack.NOT_YET;
    /** Of a seat that nothing was told of. */
    static final SeatEvents NONE = new SeatEvents(0, List.of(), List.of());

    /** Of every seat that something was told of, gone through once. */
    static Map<SeatNumber, SeatEvents> all(LiveClass live, Instant origin) {
        Map<SeatNumber, List<Recorded>> told = new HashMap<>();
        for (Recorded recorded : live.corrected()) {
            if (recorded.event() instanceof ClassEvent.AtSeat at && !live.isUndone(recorded.seq())) {
                told.computeIfAbsent(at.seat(), seat -> new ArrayList<>()).add(recorded);
            }
        }
        Map<SeatNumber, SeatEvents> all = new HashMap<>();
        told.forEach((seat, events) -> all.put(seat, of(live.plan(), inOrder(events), origin)));
        return all;
    }

    private static List<Recorded> inOrder(List<Recorded> events) {
        return events.stream().sorted(Comparator.comparing(Recorded::at)).toList();
    }

    private static SeatEvents of(Plan plan, List<Recorded> events, Instant origin) {
        double arrived = NOT_YET;
        boolean expected = false;
        int furthest = -1;
        List<Mark> hints = new ArrayList<>();
        List<Span> claims = new ArrayList<>();
        for (Recorded recorded : events) {
            double at = ClassTracks.minutes(origin, recorded.at());
            ClassEvent event = recorded.event();
            if (event instanceof ClassEvent.SeatExpected) {
                expected = true;
            } else if (event instanceof ClassEvent.SeatArrived && expected) {
                arrived = Math.min(arrived, at);
            } else if (event instanceof ClassEvent.DoneHinted hint) {
                ClassTracks.mark(plan, hint.step(), at).ifPresent(hints::add);
            } else if (event instanceof ClassEvent.HelpClaimed && !isOpen(claims)) {
                claims.add(new Span(at, NOT_YET));
            } else if (event instanceof ClassEvent.HelpSorted || event instanceof ClassEvent.SeatLeft) {
                end(claims, at);
            } else if (event instanceof ClassEvent.StepFinished finished
                    && plan.indexOf(finished.step()) > furthest) {
                furthest = plan.indexOf(finished.step());
                end(claims, at);
            }
        }
        return new SeatEvents(arrived == NOT_YET ? 0 : arrived, hints, claims);
    }

    /** When somebody last said "sorted" there, and who. */
    static Optional<Recorded> lastSorted(LiveClass live, SeatNumber seat) {
        return standing(live, seat).stream().filter(r -> r.event() instanceof ClassEvent.HelpSorted)
                .reduce((first, second) -> second);
    }

    /** Who said so. @param sorted as {@link #lastSorted} finds it */
    static String helper(Recorded sorted) {
        return ((ClassEvent.HelpSorted) sorted.event()).helper();
    }

    /** The seat's events that were not taken back, in order of the time they happened at. */
    private static List<Recorded> standing(LiveClass live, SeatNumber seat) {
        return inOrder(live.corrected().stream().filter(r -> !live.isUndone(r.seq()))
                .filter(r -> r.event() instanceof ClassEvent.AtSeat at && at.seat().equals(seat)).toList());
    }

    private static boolean isOpen(List<Span> spans) {
        return !spans.isEmpty() && spans.get(spans.size() - 1).toMinutes() == NOT_YET;
    }

    private static void end(List<Span> spans, double at) {
        if (isOpen(spans)) {
            int last = spans.size() - 1;
            spans.set(last, new Span(spans.get(last).fromMinutes(), Math.max(at, spans.get(last).fromMinutes())));
        }
    }
}
