package benchpace.web.screen.guest;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.StepKind;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.util.Optional;

/**
 * What a guest's phone shows: the class, the seat, its step, and one button. Nobody's name, and nothing of any other
 * seat.
 *
 * @param step     the step the button speaks of; empty if there is none
 * @param heading  what the seat is doing, in a few words
 * @param sentence what to do now
 * @param mark     the mark that shows at a glance that the seat was heard, or has nothing to do; may be empty
 * @param mayTell  whether there is a button
 */
public record GuestPage(String code, String className, int seat, String step, String heading, String sentence,
                        String mark, boolean mayTell) {

    private static final String NEXT = "The screen on the wall says what comes next.";

    public static GuestPage of(ClassView view, int number, String code) {
        SeatView seat = view.seat(number);
        Told told = told(view, seat);
        return new GuestPage(code, view.name(), number, told.button() ? seat.stepId() : "", told.heading(),
                told.sentence(), told.mark(), told.button());
    }

    private record Told(String heading, String sentence, String mark, boolean button) {
        static Told only(String heading, String sentence) {
            return new Told(heading, sentence, "", false);
        }
    }

    private static Told told(ClassView view, SeatView seat) {
        if (view.stage() == ClassView.Stage.CLOSED) {
            return Told.only("Thank you for coming", "This class is over.");
        }
        if (!view.guestsMayTell()) {
            return Told.only("Nothing to tap tonight", "Your host keeps an eye on the table. Just wave if you need "
                    + "a hand.");
        }
        return switch (seat.mark()) {
            case EXPECTED -> Told.only("Welcome", "Tell your host that you are here.");
            case LEFT -> Told.only("Thank you for coming", "Are you still here? Tell your host.");
            case SHARING -> Told.only("A candle for two", "Use the code at the other seat of your candle.");
            case PAUSED -> Told.only("Take your time", "Your seat is paused. Tell your host when you are back.");
            default -> seat.canFinish() && !untried(view, seat) ? working(seat) : waiting(view, seat);
        };
    }

    /** Its step is done with a firm candle, and no hand has decided on this one: its guests are asked for nothing. */
    private static boolean untried(ClassView view, SeatView seat) {
        return seat.candle().filter(c -> !c.settled()).isPresent() && view.steps().stream()
                .anyMatch(s -> s.kind() == StepKind.FINISH && s.id().equals(seat.stepId()));
    }

    private static Told working(SeatView seat) {
        return seat.hint()
                ? new Told(seat.stepName(), "Thank you. Your host knows that you are done.", "done", false)
                : new Told(seat.stepName(), "Done with it? Let your host know.", "", true);
    }

    private static Told waiting(ClassView view, SeatView seat) {
        if (view.stage() == ClassView.Stage.BEFORE) {
            return Told.only("Welcome", "Your class begins soon.");
        }
        Optional<CandleClock> setting = seat.candle().filter(c -> !c.settled());
        if (setting.isEmpty()) {
            return new Told("All done for now", NEXT, "done", false);
        }
        SaidRange range = setting.get().said();
        Times times = new Times(view.zone());
        return switch (range.phase(view.now())) {
            case BEFORE -> new Told("Your candle is setting", Phrases.sentence(CureWords.of(range, view.now(), times))
                    + ". Your host's hand test decides.", "setting", false);
            case INSIDE -> new Told("Your candle may be ready", "Your host will try it by hand, about "
                    + times.said(range) + "; please let it stand until then.", "setting", false);
            case PAST -> new Told("Your candle is to be tried", "Your host will try it by hand.", "setting", false);
        };
    }
}
