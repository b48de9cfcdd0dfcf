package benchpace.pace;

import java.util.ArrayList;
import java.util.List;

/**
 * A seat's time at one worked step up to the pour, as its ticks tell it, in minutes from the class's start.
 *
 * @param step index of the step
 * @param fromMinutes when the seat could start: its tick before, the step's opening or its arrival
 * @param toMinutes when it was ticked, or its share by plan of the time between two ticks that jumped over it
 * @param workedMinutes the time between, pauses taken out
 * @param ticked whether its end is a tick for it alone; not if it was jumped over, filled in later or left out
 */
public record StepTime(int step, double fromMinutes, double toMinutes, double workedMinutes, boolean ticked) {

    /** How much of the time between its guest was away. */
    public double awayMinutes() {
        return Math.max(0, toMinutes - fromMinutes - workedMinutes);
    }

    /** The steps that a seat has behind it, in order, as far as the record goes. */
    public static List<StepTime> of(ClassTrack track, SeatTrack seat) {
        List<SeatProgress.Done> done = SeatProgress.of(track, seat, Double.MAX_VALUE).done();
        List<StepTime> times = new ArrayList<>();
        for (int i = 0; i < done.size(); i++) {
            SeatProgress.Done one = done.get(i);
            boolean jumped = i + 1 < done.size() && done.get(i + 1).tapMinutes() == one.tapMinutes();
            times.add(new StepTime(one.step(), one.startMinutes(),
                    jumped ? done.get(i + 1).startMinutes() : one.tapMinutes(), one.minutes(), one.weight() == 1));
        }
        return times;
    }
}
