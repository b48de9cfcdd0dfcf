package benchpace.web.screen.guest;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.Picture;
import benchpace.plan.StepKind;
import benchpace.web.screen.drawing.Drawing;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.StageWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.Optional;

/**
 * What a guest's phone shows: the class, the seat, its step, and one button. Nobody's name, and nothing of any other
 * seat.
 *
 * @param step     the step the button speaks of; empty if there is none
 * @param heading  what the seat is doing, in a few words
 * @param sentence what to do now
 * @param when     the times in that sentence, said where they are read first; may be empty
 * @param drawing  of what the seat is doing
 * @param ribbon   the time its candle takes; empty where none is waited for
 * @param mark     the mark that shows at a glance that the seat was heard, or has nothing to do; may be empty
 * @param mayTell  whether there is a button
 */
public record GuestPage(String code, String className, int seat, String step, String heading, String sentence,
                        String when, Drawing drawing, Optional<GuestRibbon> ribbon, String mark, boolean mayTell) {

    private static final String NEXT = "The screen on the wall says what comes next.";

    public static GuestPage of(ClassView view, int number, String code) {
        SeatView seat = view.seat(number);
        Told told = told(view, seat);
        return new GuestPage(code, view.name(), number, told.button() ? seat.stepId() : "", told.heading(),
                told.sentence(), told.when(), Drawing.of(told.picture(), view, number), told.ribbon(), told.mark(),
                told.button());
    }

    /** What its sentence says before the times. */
    public String before() {
        return when.isEmpty() ? sentence : sentence.substring(0, sentence.indexOf(when));
    }

    /** What it says after them. */
    public String after() {
        return when.isEmpty() ? "" : sentence.substring(sentence.indexOf(when) + when.length());
    }

    private record Told(Picture picture, String heading, String sentence, String when, Optional<GuestRibbon> ribbon,
                        String mark, boolean button) {
        static Told only(Picture picture, String heading, String sentence) {
            return new Told(picture, heading, sentence, "", Optional.empty(), "", false);
        }

        static Told marked(Picture picture, String heading, String sentence, String mark) {
            return new Told(picture, heading, sentence, "", Optional.empty(), mark, false);
        }
    }

    private static Told told(ClassView view, SeatView seat) {
        if (view.stage() == ClassView.Stage.CLOSED) {
            return Told.only(Picture.FLAME, StageWords.THANKS, "This class is over.");
        }
        if (!view.guestsMayTell()) {
            return Told.only(Picture.WELCOME, "Nothing to tap tonight",
                    "Your host keeps an eye on the table. Just wave if you need a hand.");
        }
        return switch (seat.mark()) {
            case EXPECTED -> Told.only(Picture.WELCOME, "Welcome", "Tell your host that you are here.");
            case LEFT -> Told.only(Picture.SHELF, StageWords.THANKS,
                    "Are you still here? Tell your host.");
            case SHARING -> Told.only(Picture.VESSEL, "A candle for two",
                    "Use the code at the other seat of your candle.");
            case PAUSED -> Told.only(Picture.PAUSE, "Take your time",
                    "Your seat is paused. Tell your host when you are back.");
            default -> seat.canFinish() && !untried(view, seat) ? working(view, seat) : waiting(view, seat);
        };
    }

    /** Its step is done with a firm candle, and no hand has decided on this one: its guests are asked for nothing. */
    private static boolean untried(ClassView view, SeatView seat) {
        return seat.candle().filter(c -> !c.settled()).isPresent() && view.steps().stream()
                .anyMatch(s -> s.kind() == StepKind.FINISH && s.id().equals(seat.stepId()));
    }

    private static Told working(ClassView view, SeatView seat) {
        Picture picture = view.steps().stream().filter(s -> s.id().equals(seat.stepId())).findFirst()
                .map(ClassView.StepView::picture).orElse(Picture.VESSEL);
        return seat.hint()
                ? Told.marked(picture, seat.stepName(), "Thank you. Your host knows that you are done.", "done")
                : new Told(picture, seat.stepName(), "Done with it? Let your host know.", "", Optional.empty(), "",
                        true);
    }

    private static Told waiting(ClassView view, SeatView seat) {
        if (view.stage() == ClassView.Stage.BEFORE) {
            return Told.only(Picture.WELCOME, "Welcome", "Your class begins soon.");
        }
        Optional<CandleClock> setting = seat.candle().filter(c -> !c.settled());
        if (setting.isEmpty()) {
            return Told.marked(view.present().step().map(ClassView.StepView::picture).orElse(Picture.TALK),
                    "All done for now", NEXT, "done");
        }
        return setting(setting.get(), view.now(), new Times(view.zone()));
    }

    private static Told setting(CandleClock candle, Instant now, Times times) {
        SaidRange range = candle.said();
        Optional<GuestRibbon> ribbon = Optional.of(GuestRibbon.of(candle.pouredAt(), range, now));
        return switch (range.phase(now)) {
            case BEFORE -> new Told(Picture.SETTING, "Your candle is setting", Phrases.sentence(CureWords.of(range, now,
                    times)) + ". Your host's hand test decides.", times.said(range), ribbon, "", false);
            case INSIDE -> new Told(Picture.HAND_TEST, "Your candle may be ready",
                    "Your host will try it by hand, about " + times.said(range) + "; please let it stand until then.",
                    times.said(range), ribbon, "", false);
            case PAST -> Told.only(Picture.HAND_TEST, "Your candle is to be tried", "Your host will try it by hand.");
        };
    }
}
