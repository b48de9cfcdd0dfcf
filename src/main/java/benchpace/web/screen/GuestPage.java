package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.SeatView;

/**
 * What a guest's phone shows: the seat, its step, and one button. No name, and nothing of any other seat.
 *
 * @param step     the step the button speaks of; empty if there is none
 * @param heading  what the seat is doing, in a few words
 * @param sentence what to do now
 * @param mayTell  whether there is a button
 */
public record GuestPage(String code, int seat, String step, String heading, String sentence, boolean mayTell) {

    public static GuestPage of(ClassView view, int number, String code) {
        SeatView seat = view.seat(number);
        Told told = told(view, seat);
        return new GuestPage(code, number, told.button() ? seat.stepId() : "", told.heading(), told.sentence(),
                told.button());
    }

    private record Told(String heading, String sentence, boolean button) { }

    private static Told told(ClassView view, SeatView seat) {
        if (view.stage() == ClassView.Stage.CLOSED) {
            return new Told("Thank you for coming", "This class is over.", false);
        }
        if (!view.guestsMayTell()) {
            return new Told("Nothing to tap tonight", "Your host keeps an eye on the table. Just wave if you need "
                    + "a hand.", false);
        }
        return switch (seat.mark()) {
            case EXPECTED, LEFT -> new Told("Welcome", "Tell your host that you are here.", false);
            case SHARING -> new Told("A candle for two", "Use the code at the other seat of your candle.", false);
            case PAUSED -> new Told("Take your time", "Your seat is paused. Tell your host when you are back.", false);
            default -> working(seat);
        };
    }

    private static Told working(SeatView seat) {
        if (!seat.canFinish()) {
            return new Told("All done for now", "The screen on the wall says what comes next.", false);
        }
        return seat.hint()
                ? new Told(seat.stepName(), "Thank you. Your host knows that you are done.", false)
                : new Told(seat.stepName(), "Done with it? Let your host know.", true);
    }
}
