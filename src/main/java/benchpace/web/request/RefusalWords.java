package benchpace.web.request;

import benchpace.live.LiveClass;
import benchpace.live.Refusal;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.StepId;
import benchpace.words.Degrees;
import java.time.Instant;
import java.util.stream.Collectors;

/** Says why the rules of a class refused, in words for the person who tapped, and with the fitting status. */
public final class RefusalWords implements Refusal.Cases<Problem> {
    private final Plan plan;

    private RefusalWords(Plan plan) {
        this.plan = plan;
    }

    public static Problem of(LiveClass live, Refusal refusal) {
        return refusal.match(new RefusalWords(live.plan()));
    }

    private static Problem conflict(String code, String title, String detail) {
        return new Problem(409, code, title, detail);
    }

    private static Problem unknown(String code, String detail) {
        return new Problem(422, code, "The class has no such thing", detail);
    }

    private String step(StepId id) {
        return "\"" + plan.step(id).map(s -> s.name()).orElse(id.value()) + "\"";
    }

    private String activity(ActivityId id) {
        return "\"" + plan.activity(id).map(a -> a.name()).orElse(id.value()) + "\"";
    }

    @Override public Problem noSuchSeat(Refusal.NoSuchSeat r) {
        return unknown("no-such-seat", "There is no seat " + r.seat() + "; this class has seats 1 to "
                + r.seats() + ".");
    }

    @Override public Problem noSuchStep(Refusal.NoSuchStep r) {
        return unknown("no-such-step", "The plan has no step \"" + r.step() + "\".");
    }

    @Override public Problem noSuchActivity(Refusal.NoSuchActivity r) {
        return unknown("no-such-activity", "The plan has no activity \"" + r.activity() + "\".");
    }

    @Override public Problem noSuchCandle(Refusal.NoSuchCandle r) {
        return unknown("no-such-candle", "The plan has no candle \"" + r.candle() + "\" to choose.");
    }

    @Override public Problem noSuchEvent(Refusal.NoSuchEvent r) {
        return unknown("no-such-event", "There is no event " + r.seq() + " in this class.");
    }

    @Override public Problem stepNotOpen(Refusal.StepNotOpen r) {
        return conflict("step-not-open", "The step is not open", step(r.step()) + " is not open yet.");
    }

    @Override public Problem outOfOrder(Refusal.OutOfOrder r) {
        return conflict("out-of-order", "Out of order", step(r.first()) + " comes before " + step(r.step())
                + " and has to be opened first.");
    }

    @Override public Problem stepIsFree(Refusal.StepIsFree r) {
        return conflict("step-is-free", "The step opens by itself",
                step(r.step()) + " is not opened by the instructor: seats begin it when they are ready.");
    }

    @Override public Problem alreadyFinished(Refusal.AlreadyFinished r) {
        return conflict("already-finished", "Already done",
                "Seat " + r.seat() + " is done with " + step(r.step()) + " already.");
    }

    @Override public Problem alreadySo(Refusal.AlreadySo r) {
        return conflict("already-so", "It is so already", "It is " + r.what() + " already.");
    }

    @Override public Problem notSo(Refusal.NotSo r) {
        return conflict("not-so", "There is nothing to end", "It is not " + r.what() + ".");
    }

    @Override public Problem notAtTable(Refusal.NotAtTable r) {
        return conflict("not-at-table", "Nobody sits there", "Seat " + r.seat()
                + (r.leftAlready() ? " has left." : " is marked as not here yet. Tap \"arrived\" first."));
    }

    @Override public Problem sharesCandle(Refusal.SharesCandle r) {
        return conflict("shares-candle", "The candle is shared", "Seat " + r.seat()
                + " shares the candle of seat " + r.of() + "; tap that one.");
    }

    @Override public Problem notPoured(Refusal.NotPoured r) {
        return conflict("not-poured", "Nothing is poured yet", "Seat " + r.seat() + " has not poured yet.");
    }

    @Override public Problem claimedBy(Refusal.ClaimedBy r) {
        return conflict("claimed", "Somebody else has it", r.helper() + " is already on the way to seat "
                + r.seat() + ".");
    }

    @Override public Problem activityFull(Refusal.ActivityFull r) {
        return conflict("activity-full", "No place is free",
                activity(r.activity()) + " has " + r.places() + " places and all are taken.");
    }

    @Override public Problem cannotUndo(Refusal.CannotUndo r) {
        return conflict("cannot-undo", "That cannot be taken back", "Event " + r.seq() + " cannot be changed.");
    }

    @Override public Problem stepInUse(Refusal.StepInUse r) {
        String seats = r.seats().stream().map(Object::toString).collect(Collectors.joining(", "));
        return conflict("step-in-use", "The step is in use", step(r.step()) + " stays open: seat " + seats
                + (r.seats().size() == 1 ? " is" : " are") + " done with it. Take that back first.");
    }

    @Override public Problem outsideClass(Refusal.OutsideClass r) {
        return outside("outside-class", r.at(), r.from(), r.until());
    }

    @Override public Problem movedOutsideClass(Refusal.MovedOutsideClass r) {
        return outside("moved-outside-class", r.to(), r.from(), r.until());
    }

    private static Problem outside(String type, Instant time, Instant from, Instant until) {
        return new Problem(422, type, "The time lies outside the class",
                "The time " + time + " does not lie between " + from + " and " + until + ".");
    }

    @Override public Problem classIsClosed(Refusal.ClassIsClosed r) {
        return conflict("class-closed", "The class is over", "The class is closed. Undo the closing to go on.");
    }

    @Override public Problem idTaken(Refusal.IdTaken r) {
        return Problem.idTaken("Event " + r.seq() + " of this class is another tap with the same id.");
    }

    @Override public Problem absurd(Refusal.Absurd r) {
        if (r.what().equals("celsius")) {
            return new Problem(422, "absurd-value", "No such temperature can be", Degrees.both(r.value())
                    + " cannot be right here: what is believed is " + Degrees.both(r.least()) + " to "
                    + Degrees.both(r.most()) + ". Was the unit the right one?");
        }
        return new Problem(422, "absurd-value", "No such value can be", "\"" + r.what() + "\" is "
                + plain(r.value()) + "; it can be " + plain(r.least()) + " to " + plain(r.most()) + ".");
    }

    private static String plain(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
