package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.report.WhatHeld.Link;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Whether flags were right, now that it is known how the class went on, and which seats should have had one and did
 * not.
 *
 * <p>The measures are those by which the flags are scored on made-up classes, where the truth is known: a stall counts
 * from {@value #STALL_MINUTES} minutes on, and a seat was slow that poured more than {@value #LATE_POUR_MINUTES}
 * minutes after the middle of the table. A real class has no truth beside its record, so a stall is read from the taps:
 * a seat that was still {@value #STALL_MINUTES} minutes at its step after the flag had one. What the record cannot tell
 * is left open: a seat that somebody went to may owe its being done to that, and one that left never finished. A tick
 * that is late by more than those minutes looks like a stall, here as to everybody who was in the room.
 *
 * @param flags  every flag, in the order given
 * @param missed by seat and step
 */
public record Hindsight(List<Judged> flags, List<Missed> missed) {
    /** A stall counts from so many minutes on. */
    public static final double STALL_MINUTES = 5;
    /** A seat is slow that pours so much later than the middle of the table. */
    public static final double LATE_POUR_MINUTES = 6;
    /** Fewer seats than this have no middle to compare one with. */
    private static final int LEAST_SEATS = 3;

    /** What became of a flag. */
    public enum Verdict { RIGHT, WRONG, OPEN }

    /** Why. In the order in which they are asked: the first that holds is told. */
    public enum Reason {
        /** Its time at that step, two minutes or more over the plan, is on the way to the last candle. */
        HELD(Verdict.RIGHT),
        /** It poured long after the middle of the table, and the flag went up before. */
        LATE_POUR(Verdict.RIGHT),
        /** It was at the step for long after the flag had gone up, time away taken out. */
        STAYED(Verdict.RIGHT),
        /** It left, or the class was over, before it was done. */
        UNFINISHED(Verdict.OPEN),
        /** It has no tick for the step: it was ticked for a later one, and had been done. */
        UNTICKED(Verdict.WRONG),
        /** It was done soon, and somebody had gone there. */
        HELPED(Verdict.OPEN),
        /** It was done soon, by itself. */
        SOON_DONE(Verdict.WRONG);

        private final Verdict verdict;

        Reason(Verdict verdict) {
            this.verdict = verdict;
        }

        public Verdict verdict() {
            return verdict;
        }
    }

    /**
     * A flag looked back on.
     *
     * @param afterMinutes how long the seat was at the step after the flag had gone up, time away taken out; to the
     *                     end if it was never done; a step without a tick has its share by plan of the time between
     */
    public record Judged(FlagSpan flag, Reason reason, double afterMinutes) {
        public Verdict verdict() {
            return reason.verdict();
        }
    }

    /**
     * A seat that stalled at a step on the way to the last candle, and was not flagged meanwhile.
     *
     * @param tookMinutes   what the step took it, time away taken out
     * @param middleMinutes what it took the middle of the table
     */
    public record Missed(int seat, int step, double tookMinutes, double middleMinutes) { }

    public Hindsight {
        flags = List.copyOf(flags);
        missed = List.copyOf(missed);
    }

    /** How many flags came out so. */
    public int count(Verdict verdict) {
        return (int) flags.stream().filter(f -> f.verdict() == verdict).count();
    }

    /**
     * Looks back on the flags of a class.
     *
     * @param held       what the last candle waited for; empty before the first pour
     * @param endMinutes how far the class is looked at
     */
    public static Hindsight of(ClassTrack track, List<FlagSpan> flags, Optional<WhatHeld> held, double endMinutes) {
        Looking looking = new Looking(track, flags, held, endMinutes);
        return new Hindsight(flags.stream().map(looking::judged).toList(), looking.missed());
    }

    /** One class looked at. */
    private static final class Looking {
        private final ClassTrack track;
        private final List<FlagSpan> flags;
        private final List<Link> way;
        private final double end;
        private final Map<Integer, SeatTrack> seats = new LinkedHashMap<>();
        private final Map<Integer, List<StepTime>> times = new LinkedHashMap<>();

        Looking(ClassTrack track, List<FlagSpan> flags, Optional<WhatHeld> held, double end) {
            this.track = track;
            this.flags = flags;
            this.way = held.map(WhatHeld::links).orElse(List.of());
            this.end = end;
            for (SeatTrack seat : track.seats()) {
                seats.put(seat.seat(), seat);
                times.put(seat.seat(), StepTime.of(track, seat));
            }
        }

        Judged judged(FlagSpan flag) {
            SeatTrack seat = seats.get(flag.seat());
            Optional<StepTime> time = time(flag.seat(), flag.step());
            double over = Math.max(flag.fromMinutes(),
                    time.map(StepTime::toMinutes).orElse(Math.min(end, seat.leftMinutes())));
            double after = over - flag.fromMinutes() - seat.pausedWithin(flag.fromMinutes(), over);
            return new Judged(flag, reason(flag, seat, time, over, after), after);
        }

        private Reason reason(FlagSpan flag, SeatTrack seat, Optional<StepTime> time, double over, double after) {
            boolean here = seat.leftMinutes() > end;
            if (held(flag)) {
                return Reason.HELD;
            }
            if (pouredLate(flag, here)) {
                return Reason.LATE_POUR;
            }
            if (after >= STALL_MINUTES && (time.isPresent() || here)) {
                return Reason.STAYED;
            }
            if (time.isEmpty()) {
                return Reason.UNFINISHED;
            }
            if (seat.taps().stream().noneMatch(t -> t.step() == flag.step())) {
                return Reason.UNTICKED;
            }
            boolean helped = seat.claims().stream()
                    .anyMatch(c -> c.fromMinutes() <= over && c.toMinutes() >= flag.fromMinutes());
            return helped ? Reason.HELPED : Reason.SOON_DONE;
        }

        private boolean held(FlagSpan flag) {
            return way.stream().anyMatch(l -> l.part().kind() == Part.Kind.STEP && l.part().seat() == flag.seat()
                    && l.part().step() == flag.step() && l.isOver() && l.toMinutes() > flag.fromMinutes());
        }

        /** Who has not poured at all by the end is late once the end is. */
        private boolean pouredLate(FlagSpan flag, boolean here) {
            OptionalDouble own = time(flag.seat(), track.pourStep()).map(t -> OptionalDouble.of(t.toMinutes()))
                    .orElse(here ? OptionalDouble.of(end) : OptionalDouble.empty());
            OptionalDouble middle = middle(times.keySet().stream()
                    .flatMap(s -> time(s, track.pourStep()).stream()).mapToDouble(StepTime::toMinutes));
            return own.isPresent() && middle.isPresent() && flag.fromMinutes() <= own.getAsDouble()
                    && own.getAsDouble() > middle.getAsDouble() + LATE_POUR_MINUTES;
        }

        private Optional<StepTime> time(int seat, int step) {
            return times.get(seat).stream().filter(t -> t.step() == step).findFirst();
        }

        List<Missed> missed() {
            List<Missed> missed = new ArrayList<>();
            way.stream().filter(l -> l.part().kind() == Part.Kind.STEP && l.overMinutes() >= STALL_MINUTES)
                    .forEach(l -> missed(l.part().seat(), l.part().step()).ifPresent(missed::add));
            return missed.stream().distinct().toList();
        }

        private Optional<Missed> missed(int seat, int step) {
            Optional<StepTime> own = time(seat, step).filter(StepTime::ticked);
            OptionalDouble middle = middle(times.keySet().stream().flatMap(s -> time(s, step).stream())
                    .filter(StepTime::ticked).mapToDouble(StepTime::workedMinutes));
            if (own.isEmpty() || middle.isEmpty() || wasFlagged(seat, own.get())) {
                return Optional.empty();
            }
            double took = own.get().workedMinutes();
            return Optional.of(new Missed(seat, step, took, middle.getAsDouble()))
                    .filter(m -> took >= m.middleMinutes() + STALL_MINUTES);
        }

        private boolean wasFlagged(int seat, StepTime time) {
            return flags.stream().anyMatch(f -> f.seat() == seat && (f.step() == time.step()
                    || f.fromMinutes() < time.toMinutes() && f.toMinutes() > time.fromMinutes()));
        }

        private static OptionalDouble middle(DoubleStream values) {
            double[] all = values.toArray();
            return all.length < LEAST_SEATS ? OptionalDouble.empty() : OptionalDouble.of(Medians.of(all));
        }
    }
}
