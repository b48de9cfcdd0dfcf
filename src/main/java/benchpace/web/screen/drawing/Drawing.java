package benchpace.web.screen.drawing;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.ClassView.StepView;
import benchpace.live.Seat;
import benchpace.plan.ActivityKind;
import benchpace.plan.Candle;
import benchpace.plan.Picture;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepKind;
import benchpace.plan.Vessel;
import benchpace.plan.Vessel.Material;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A drawing as {@code drawing/picture.jte} makes it: decoration beside words that say the same, so unseen by those who
 * listen to a page.
 *
 * @param vessel stands in it where {@link Picture#showsVessel}; elsewhere unused
 */
public record Drawing(Picture picture, Vessel vessel) {
    /** Strokes of the whole family, in units of its box of 320 by 320. */
    static final double LINE = 8;
    /** Stands where no plan says which: of about the common proportions of a candle glass. */
    public static final Vessel USUAL = new Vessel("usual", "a glass", Material.GLASS, 64, 3, 80);

    /** Of no class. */
    public static Drawing of(Picture picture) {
        return new Drawing(picture, USUAL);
    }

    public static Drawing of(Picture picture, Vessel vessel) {
        return new Drawing(picture, vessel);
    }

    /** With the vessel of the plan's first candle. */
    public static Drawing of(Picture picture, Plan plan) {
        return new Drawing(picture, plan.candles().stream().map(Candle::vessel).findFirst().orElse(USUAL));
    }

    /** With the vessel that most of the class pour. */
    public static Drawing of(Picture picture, ClassView view) {
        return new Drawing(picture, vessel(view));
    }

    /** With the vessel that a seat pours. */
    public static Drawing of(Picture picture, ClassView view, int seat) {
        return new Drawing(picture, candle(view, seat).map(Candle::vessel).orElse(USUAL));
    }

    /** What a seat pours, or the seat whose candle it shares; empty if the plan names no candle. */
    public static Optional<Candle> candle(ClassView view, int seat) {
        int own = view.known().seats().stream().filter(s -> s.number().value() == seat).findFirst()
                .flatMap(Seat::sharesWith).map(SeatNumber::value).orElse(seat);
        return Optional.ofNullable(view.room().chosen().get(own)).flatMap(view.plan()::candle)
                .or(() -> view.plan().candles().stream().findFirst());
    }

    public static Drawing of(StepView step, ClassView view) {
        return of(step.picture(), view);
    }

    public static Drawing of(ActivityKind activity, ClassView view) {
        return of(activity.picture(), view);
    }

    /** What the class does now; empty between its steps. */
    public static Optional<Drawing> present(ClassView view) {
        if (view.stage() == Stage.BEFORE) {
            return Optional.of(of(Picture.WELCOME, view));
        }
        if (view.stage() == Stage.CLOSED) {
            return Optional.of(of(view.cure().poured() > 0 ? Picture.FLAME : Picture.WRAP, view));
        }
        return view.present().step().map(step ->
                of(step.kind() == StepKind.CURE && !view.cure().untried().isEmpty() ? Picture.HAND_TEST
                        : step.picture(), view));
    }

    /** The one that most seats pour that make a candle, of several the plan's first. */
    private static Vessel vessel(ClassView view) {
        List<Candle> candles = view.plan().candles();
        Map<String, Integer> seats = new HashMap<>();
        view.known().seats().stream()
                .filter(seat -> seat.presence() != Seat.Presence.LEFT && seat.sharesWith().isEmpty())
                .forEach(seat -> seats.merge(seat.candle().orElse(candles.isEmpty() ? "" : candles.get(0).id()), 1,
                        Integer::sum));
        return candles.stream()
                .reduce((most, next) -> seats.getOrDefault(next.id(), 0) > seats.getOrDefault(most.id(), 0)
                        ? next : most)
                .map(Candle::vessel).orElse(USUAL);
    }

    /** The vessel as large as a place of the drawing allows. */
    public VesselShape standing(double left, double top, double width, double height) {
        return VesselShape.within(new VesselShape.Box(left, top, width, height), vessel, LINE);
    }
}
