package benchpace.web.screen.instructor;

import benchpace.board.cooling.RoomView;
import benchpace.board.view.ClassView;
import benchpace.words.Degrees;
import benchpace.words.FitWords;
import benchpace.words.Times;
import java.util.Optional;

/**
 * What the instructor sees of the room: the temperatures that the countdown rests on, and what it learned last.
 *
 * @param fit      by how much the last reading or test moved the candles; empty if there was none
 * @param computed whether the countdown is computed; otherwise it is the plan's figure and no temperature matters
 */
public record RoomPanel(String fit, boolean computed, Reading room, Reading pour) {

    /** A temperature in use. @param from "read at 18:05" or "the plan's figure" */
    public record Reading(double celsius, String words, String from) { }

    public static RoomPanel of(ClassView view, Times times) {
        RoomView room = view.room();
        return new RoomPanel(room.refit().map(FitWords::of).orElse(""), !room.candles().isEmpty(),
                reading(room.room(), times), reading(room.pour(), times));
    }

    private static Reading reading(Optional<RoomView.Warmth> warmth, Times times) {
        return warmth.map(w -> new Reading(w.celsius(), Degrees.celsius(w.celsius()),
                        w.readAt().map(at -> "read at " + times.clock(at)).orElse("the plan's figure")))
                .orElse(new Reading(0, "", ""));
    }
}
