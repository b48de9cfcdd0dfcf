package benchpace.board.pacing;

import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws every seat's way through the steps as a line. */
public final class PaceLinesMaker {
    private PaceLinesMaker() { }

    public static PaceLines of(LiveClass live, Pace pace, Instant now) {
        Instant begun = ClassTracks.origin(live);
        List<Step> steps = live.plan().steps().stream().filter(Step::needsTap).toList();
        List<PaceLines.Line> lines = live.seats().stream()
                .filter(s -> s.presence() != Seat.Presence.EXPECTED && s.sharesWith().isEmpty())
                .map(s -> new PaceLines.Line(s.number().value(), pace.flags().containsKey(s.number()),
                        points(s, steps, begun, now)))
                .toList();
        Instant from = lines.stream().flatMap(l -> l.points().stream()).map(PaceLines.Point::at)
                .min(Comparator.naturalOrder()).orElse(now);
        return new PaceLines(from, now.isBefore(from) ? from : now, steps.stream().map(Step::name).toList(), lines);
    }

    private static List<PaceLines.Point> points(Seat seat, List<Step> steps, Instant begun, Instant now) {
        List<PaceLines.Point> points = new ArrayList<>();
        int level = 0;
        for (int i = 0; i < steps.size(); i++) {
            Seat.Finish finish = seat.finishes().get(steps.get(i).id());
            if (finish != null) {
                level = i + 1;
                points.add(new PaceLines.Point(finish.at(), level));
            }
        }
        points.sort(Comparator.comparing(PaceLines.Point::at).thenComparing(PaceLines.Point::level));
        Instant start = seat.presenceSince().isAfter(begun) ? seat.presenceSince() : begun;
        if (points.isEmpty() || start.isBefore(points.get(0).at())) {
            points.add(0, new PaceLines.Point(start, 0));
        }
        Instant end = seat.hasLeft() ? seat.presenceSince() : now;
        if (end.isAfter(points.get(points.size() - 1).at())) {
            points.add(new PaceLines.Point(end, level));
        }
        return points;
    }
}
