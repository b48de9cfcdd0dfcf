package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a step took at the table, from the ticks it has; steps jumped over or left out tell nothing. Minutes with
 * pauses taken out.
 *
 * @param step index of the step
 * @param seats how many seats it rests on, at least one
 * @param mostSeat the seat that took longest
 */
public record StepSummary(int step, double plannedMinutes, int seats, double leastMinutes, double medianMinutes,
                          double mostMinutes, int mostSeat) {

    /** Whether its middle was two minutes or more over the plan, as whole minutes are told. */
    public boolean isOver() {
        return medianMinutes - plannedMinutes >= WhatHeld.WORTH_A_LOOK_MINUTES;
    }

    private record Spent(int seat, double minutes) { }

    /** The worked steps up to the pour that have been ticked, in order. */
    public static List<StepSummary> of(ClassTrack track) {
        List<StepSummary> summaries = new ArrayList<>();
        for (int k = 0; k <= track.pourStep(); k++) {
            if (track.steps().get(k).kind().isWorked()) {
                of(track, k).ifPresent(summaries::add);
            }
        }
        return summaries;
    }

    private static Optional<StepSummary> of(ClassTrack track, int step) {
        List<Spent> spent = new ArrayList<>();
        for (SeatTrack seat : track.seats()) {
            StepTime.of(track, seat).stream().filter(t -> t.step() == step && t.ticked())
                    .forEach(t -> spent.add(new Spent(seat.seat(), t.workedMinutes())));
        }
        if (spent.isEmpty()) {
            return Optional.empty();
        }
        spent.sort(Comparator.comparing(Spent::minutes));
        Spent most = spent.get(spent.size() - 1);
        double median = Medians.of(spent.stream().mapToDouble(Spent::minutes).toArray());
        return Optional.of(new StepSummary(step, track.steps().get(step).planMinutes(), spent.size(),
                spent.get(0).minutes(), median, most.minutes(), most.seat()));
    }
}
