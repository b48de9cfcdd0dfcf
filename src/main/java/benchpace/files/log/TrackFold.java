package benchpace.files.log;

import benchpace.pace.ClassTrack;
import benchpace.pace.Mark;
import benchpace.pace.ReadyOutlook;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.Tap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Folds a log's events, one by one, into the record that pace judges from. Not for use by several threads. */
public final class TrackFold {
    private static final double NOT_YET = SeatTrack.NOT_YET;

    private final ClassLog log;
    private final List<Double> opened = new ArrayList<>();
    private final Map<Integer, SeatFold> seats = new LinkedHashMap<>();

    public TrackFold(ClassLog log) {
        this.log = log;
        log.steps().forEach(step -> opened.add(step.led() ? NOT_YET : 0.0));
        log.places().forEach(place -> seats.put(place.seat(), new SeatFold(place)));
    }

    /** Takes one event in; events come in order of time. */
    public void apply(LogEvent event) {
        double at = event.seconds() / 60;
        if (event.type() == LogEvent.Type.OPEN_STEP) {
            if (opened.get(event.step()) > at) {
                opened.set(event.step(), at);
            }
        } else {
            seats.get(event.seat()).apply(event, at);
        }
    }

    /** The record so far. */
    public ClassTrack track() {
        return new ClassTrack(log.steps(), opened, log.cureMinutes(),
                seats.values().stream().map(SeatFold::track).toList());
    }

    private static final class SeatFold {
        private final ClassLog.Place place;
        private double arrived;
        private double left = NOT_YET;
        private double set = NOT_YET;
        private final List<LogEvent> taps = new ArrayList<>();
        private final Set<String> undone = new HashSet<>();
        private final List<Span> pauses = new ArrayList<>();
        private final List<Span> claims = new ArrayList<>();
        private final List<Mark> stillAtIt = new ArrayList<>();
        private final List<Mark> hints = new ArrayList<>();

        SeatFold(ClassLog.Place place) {
            this.place = place;
            this.arrived = place.present() ? 0 : NOT_YET;
        }

        void apply(LogEvent event, double at) {
            switch (event.type()) {
                case FINISH_STEP, SKIP_STEP -> {
                    taps.add(event);
                    arrived = Math.min(arrived, at);
                }
                case UNDO -> undone.add(event.id());
                case ARRIVE -> {
                    arrived = Math.min(arrived, at);
                    left = NOT_YET;
                }
                case LEAVE -> left = Math.min(left, at);
                case PAUSE -> begin(pauses, at);
                case RESUME -> end(pauses, at);
                case CLAIM -> begin(claims, at);
                case SORTED -> end(claims, at);
                case JUDGE_SET -> set = Math.min(set, at);
                case STILL_AT_IT -> stillAtIt.add(new Mark(event.step(), at));
                case SAYS_DONE -> hints.add(new Mark(event.step(), at));
                default -> throw new IllegalStateException("not an event of a seat: " + event);
            }
        }

        private static void begin(List<Span> spans, double at) {
            if (spans.isEmpty() || spans.get(spans.size() - 1).toMinutes() <= at) {
                spans.add(new Span(at, NOT_YET));
            }
        }

        private static void end(List<Span> spans, double at) {
            if (!spans.isEmpty() && spans.get(spans.size() - 1).toMinutes() == NOT_YET) {
                spans.set(spans.size() - 1, new Span(spans.get(spans.size() - 1).fromMinutes(), at));
            }
        }

        SeatTrack track() {
            List<Tap> standing = taps.stream().filter(t -> t.id().isEmpty() || !undone.contains(t.id()))
                    .map(t -> new Tap(t.step(), t.seconds() / 60, t.type() == LogEvent.Type.SKIP_STEP)).toList();
            return new SeatTrack(place.seat(), place.party(), place.sharesCandle(), arrived, left, pauses, standing,
                    stillAtIt, hints, claims, set, ReadyOutlook.UNKNOWN);
        }
    }
}
