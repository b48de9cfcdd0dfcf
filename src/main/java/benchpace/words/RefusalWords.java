package benchpace.words;

import static benchpace.words.Explanation.conflict;

import benchpace.live.Refusal;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.StepId;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says why the rules of a class refused, in words for the person who tapped. */
public final class RefusalWords implements Refusal.Cases<Explanation> {
    private final Plan plan;

    private RefusalWords(Plan plan) {
        this.plan = plan;
    }

    /** @param plan the class's, for the names of steps and activities */
    public static Explanation of(Plan plan, Refusal refusal) {
        return refusal.match(new RefusalWords(plan));
    }

    /** "judged set": each is called what it says. */
    private static String state(Refusal.State state) {
        return state.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Explanation unknown(String code, String detail) {
        return Explanation.value(code, "The class has no such thing", detail);
    }

    private String step(StepId id) {
        return "\"" + plan.step(id).map(s -> s.name()).orElse(id.value()) + "\"";
    }

    private String activity(ActivityId id) {
        return "\"" + plan.activity(id).map(a -> a.name()).orElse(id.value()) + "\"";
    }

    @Override public Explanation noSuchSeat(Refusal.NoSuchSeat r) {
        return unknown("no-such-seat", "There is no seat " + r.seat() + "; this class has seats 1 to "
                + r.seats() + ".");
    }

    @Override public Explanation noSuchStep(Refusal.NoSuchStep r) {
        return unknown("no-such-step", "The plan has no step \"" + r.step() + "\".");
    }

    @Override public Explanation noSuchActivity(Refusal.NoSuchActivity r) {
        return unknown("no-such-activity", "The plan has no activity \"" + r.activity() + "\".");
    }

    @Override public Explanation noSuchCandle(Refusal.NoSuchCandle r) {
        return unknown("no-such-candle", "The plan has no candle \"" + r.candle() + "\" to choose.");
    }

    @Override public Explanation noSuchEvent(Refusal.NoSuchEvent r) {
        return unknown("no-such-event", "There is no event " + r.seq() + " in this class.");
    }

    @Override public Explanation stepNotOpen(Refusal.StepNotOpen r) {
        return conflict("step-not-open", "The step is not open", step(r.step()) + " is not open yet.");
    }

    @Override public Explanation outOfOrder(Refusal.OutOfOrder r) {
        return conflict("out-of-order", "Out of order", step(r.first()) + " comes before " + step(r.step())
                + " and has to be opened first.");
    }

    @Override public Explanation stepIsFree(Refusal.StepIsFree r) {
        return conflict("step-is-free", "The step opens by itself",
                step(r.step()) + " is not opened by the instructor: seats begin it when they are ready.");
    }

    @Override public Explanation alreadyFinished(Refusal.AlreadyFinished r) {
        return conflict("already-finished", "Already done",
                "Seat " + r.seat() + " is done with " + step(r.step()) + " already.");
    }

    @Override public Explanation alreadySo(Refusal.AlreadySo r) {
        return conflict("already-so", "It is so already", "It is " + state(r.what()) + " already.");
    }

    @Override public Explanation notSo(Refusal.NotSo r) {
        return conflict("not-so", "There is nothing to end", "It is not " + state(r.what()) + ".");
    }

    @Override public Explanation notAtTable(Refusal.NotAtTable r) {
        return conflict("not-at-table", "Nobody sits there", "Seat " + r.seat()
                + (r.leftAlready() ? " has left." : " is marked as not here yet. Tap \"arrived\" first."));
    }

    @Override public Explanation sharesCandle(Refusal.SharesCandle r) {
        return conflict("shares-candle", "The candle is shared", "Seat " + r.seat()
                + " shares the candle of seat " + r.of() + "; tap that one.");
    }

    @Override public Explanation notPoured(Refusal.NotPoured r) {
        return conflict("not-poured", "Nothing is poured yet", "Seat " + r.seat() + " has not poured yet.");
    }

    @Override public Explanation claimedBy(Refusal.ClaimedBy r) {
        return conflict("claimed", "Somebody else has it", r.helper() + " is already on the way to seat "
                + r.seat() + ".");
    }

    @Override public Explanation activityFull(Refusal.ActivityFull r) {
        return conflict("activity-full", "No place is free",
                activity(r.activity()) + " has " + r.places() + " places and all are taken.");
    }

    @Override public Explanation cannotUndo(Refusal.CannotUndo r) {
        return conflict("cannot-undo", "That cannot be taken back", "Event " + r.seq() + " cannot be changed.");
    }

    @Override public Explanation stepInUse(Refusal.StepInUse r) {
        String seats = r.seats().stream().map(Object::toString).collect(Collectors.joining(", "));
        return conflict("step-in-use", "The step is in use", step(r.step()) + " stays open: seat " + seats
                + (r.seats().size() == 1 ? " is" : " are") + " done with it. Take that back first.");
    }

    @Override public Explanation outsideClass(Refusal.OutsideClass r) {
        return outside("outside-class", r.at(), r.from(), r.until());
    }

    @Override public Explanation movedOutsideClass(Refusal.MovedOutsideClass r) {
        return outside("moved-outside-class", r.to(), r.from(), r.until());
    }

    private static Explanation outside(String type, Instant time, Instant from, Instant until) {
        return Explanation.value(type, "The time lies outside the class",
                "The time " + time + " does not lie between " + from + " and " + until + ".");
    }

    @Override public Explanation classIsClosed(Refusal.ClassIsClosed r) {
        return conflict("class-closed", "The class is over", "The class is closed. Undo the closing to go on.");
    }

    @Override public Explanation guestsForgotten(Refusal.GuestsForgotten r) {
        return conflict("guests-forgotten", "The guests are forgotten", "The guests of this class are forgotten, so no "
                + "names and no notes are written down for it any more.");
    }

    @Override public Explanation idTaken(Refusal.IdTaken r) {
        return Explanation.idTaken("Event " + r.seq() + " of this class is another tap with the same id.");
    }

    @Override public Explanation alreadyBegun(Refusal.AlreadyBegun r) {
        return conflict("already-begun", "The class has begun", "The class has begun, so its plan, its times and its "
                + "tables stay. Names, notes and seats can still be corrected.");
    }

    @Override public Explanation seatInUse(Refusal.SeatInUse r) {
        return conflict("seat-in-use", "Something is made there", "Seat " + r.seat() + " has begun a candle. It can be "
                + "taken away once its guest has left.");
    }

    @Override public Explanation seatIsAway(Refusal.SeatIsAway r) {
        return conflict("seat-is-away", "The seat was taken away", "Seat " + r.seat() + " was taken away. Undo that to "
                + "have it back.");
    }

    @Override public Explanation lastSeat(Refusal.LastSeat r) {
        return conflict("last-seat", "It is the last seat", "A class has at least one seat, and seat " + r.seat()
                + " is the last.");
    }

    @Override public Explanation absurd(Refusal.Absurd r) {
        if (r.what().equals("celsius")) {
            return Explanation.value("absurd-value", "No such temperature can be", Degrees.both(r.value())
                    + " cannot be right here: what is believed is " + Degrees.both(r.least()) + " to "
                    + Degrees.both(r.most()) + ". Was the unit the right one?");
        }
        return Explanation.value("absurd-value", "No such value can be", "\"" + r.what() + "\" is "
                + plain(r.value()) + "; it can be " + plain(r.least()) + " to " + plain(r.most()) + ".");
    }

    private static String plain(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
