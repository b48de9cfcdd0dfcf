package benchpace.pace;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A class as recorded so far: the only thing judgements are made from.
 *
 * @param steps in order
 * @param openedMinutes for each step when the instructor opened it, minutes from the class's start; free steps 0,
 *        led steps not yet opened {@link SeatTrack#NOT_YET}
 * @param cureMinutes what the plan gives the cure
 * @param seats the places at the table
 */
public record ClassTrack(List<PaceStep> steps, List<Double> openedMinutes, double cureMinutes,
                         List<SeatTrack> seats) {
    public ClassTrack {
        steps = List.copyOf(steps);
        openedMinutes = List.copyOf(openedMinutes);
        seats = List.copyOf(seats);
        if (steps.isEmpty() || openedMinutes.size() != steps.size()) {
            throw new IllegalArgumentException("each step needs its opening time");
        }
        if (!(cureMinutes >= 0)) {
            throw new IllegalArgumentException("a cure of " + cureMinutes + " minutes");
        }
        Set<Integer> numbers = new HashSet<>();
        for (SeatTrack seat : seats) {
            if (!numbers.add(seat.seat())) {
                throw new IllegalArgumentException("two seats numbered " + seat.seat());
            }
            for (Tap tap : seat.taps()) {
                if (tap.step() >= steps.size()) {
                    throw new IllegalArgumentException("a tap of step " + tap.step() + " of " + steps.size());
                }
            }
        }
    }

    /** Index of the last pour, or of the last worked step when the plan has no pour, or -1. */
    public int pourStep() {
        int worked = -1;
        int pour = -1;
        for (int k = 0; k < steps.size(); k++) {
            if (steps.get(k).kind() == WorkKind.POUR) {
                pour = k;
            }
            if (steps.get(k).kind().isWorked()) {
                worked = k;
            }
        }
        return pour >= 0 ? pour : worked;
    }

    /** The record as it stood at {@code minutes}; judgements about the past are made from this and look no further. */
    public ClassTrack asOf(double minutes) {
        List<Double> opened = new ArrayList<>();
        for (double at : openedMinutes) {
            opened.add(at <= minutes ? at : SeatTrack.NOT_YET);
        }
        return new ClassTrack(steps, opened, cureMinutes, seats.stream().map(s -> s.asOf(minutes)).toList());
    }

    /** Whether both records tell the same about everything until {@code minutes}; what cures promise is left aside. */
    public boolean samePast(ClassTrack other, double minutes) {
        return steps.equals(other.steps) && past(minutes).equals(other.past(minutes));
    }

    private List<Object> past(double minutes) {
        ClassTrack then = asOf(minutes);
        List<Object> past = new ArrayList<>(then.openedMinutes());
        then.seats.forEach(seat -> past.add(seat.withReady(ReadyOutlook.UNKNOWN)));
        return past;
    }

    /** Every moment something recorded in this track happened, ascending, each once. */
    public List<Double> moments() {
        TreeSet<Double> moments = new TreeSet<>(openedMinutes);
        for (SeatTrack seat : seats) {
            moments.add(seat.arrivedMinutes());
            moments.add(seat.leftMinutes());
            moments.add(seat.setMinutes());
            seat.pauses().forEach(p -> moments.addAll(List.of(p.fromMinutes(), p.toMinutes())));
            seat.claims().forEach(p -> moments.addAll(List.of(p.fromMinutes(), p.toMinutes())));
            seat.taps().forEach(t -> moments.add(t.atMinutes()));
            seat.stillAtIt().forEach(m -> moments.add(m.atMinutes()));
            seat.hints().forEach(m -> moments.add(m.atMinutes()));
        }
        moments.remove(SeatTrack.NOT_YET);
        return List.copyOf(moments);
    }
}
