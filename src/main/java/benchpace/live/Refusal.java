package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Instant;
import java.util.List;

/** Why the rules of a class do not let an event stand. Facts only; the edge turns them into words. */
public sealed interface Refusal {
    <R> R match(Cases<R> cases);

    record NoSuchSeat(SeatNumber seat, int seats) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.noSuchSeat(this);
        }
    }

    record NoSuchStep(StepId step) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.noSuchStep(this);
        }
    }

    record NoSuchActivity(ActivityId activity) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.noSuchActivity(this);
        }
    }

    record NoSuchCandle(String candle) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.noSuchCandle(this);
        }
    }

    record NoSuchEvent(long seq) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.noSuchEvent(this);
        }
    }

    /** The step is led and has not been opened. */
    record StepNotOpen(StepId step) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.stepNotOpen(this);
        }
    }

    /** A led step before this one has not been opened. */
    record OutOfOrder(StepId step, StepId first) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.outOfOrder(this);
        }
    }

    /** Only led steps are opened. */
    record StepIsFree(StepId step) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.stepIsFree(this);
        }
    }

    /** The seat had finished the step already. @param seq the tap that says so */
    record AlreadyFinished(SeatNumber seat, StepId step, long seq) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.alreadyFinished(this);
        }
    }

    /** How a class, a step, a seat or a tap may be. */
    enum State {
        CREATED, CLOSED, OPEN, PASSED, SKIPPED, SET_RIGHT, TOLD, ALLOWED, SWITCHED_OFF, UNDONE, EXPECTED, GONE, PAUSED,
        SHARED, SEEN, JUDGED_SET, CLAIMED, TAKING_PART, SET_UP, AT_THE_TABLE
    }

    /** What is wished for is so already. */
    record AlreadySo(State what) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.alreadySo(this);
        }
    }

    /** What should end has not begun: a pause, a claim, an activity. */
    record NotSo(State what) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.notSo(this);
        }
    }

    record NotAtTable(SeatNumber seat, boolean leftAlready) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.notAtTable(this);
        }
    }

    record SharesCandle(SeatNumber seat, SeatNumber of) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.sharesCandle(this);
        }
    }

    /** Nothing was poured at that seat yet. */
    record NotPoured(SeatNumber seat) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.notPoured(this);
        }
    }

    /** Another helper has it. */
    record ClaimedBy(SeatNumber seat, String helper) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.claimedBy(this);
        }
    }

    record ActivityFull(ActivityId activity, int places) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.activityFull(this);
        }
    }

    /** That sort of event is not undone or corrected. */
    record CannotUndo(long seq) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.cannotUndo(this);
        }
    }

    /** Seats have finished a step whose opening should be undone. */
    record StepInUse(StepId step, List<SeatNumber> seats) implements Refusal {
        public StepInUse {
            seats = List.copyOf(seats);
        }

        @Override public <R> R match(Cases<R> cases) {
            return cases.stepInUse(this);
        }
    }

    /** The tap says it was made in the future or before the class existed; made at another time it might stand. */
    record OutsideClass(Instant at, Instant from, Instant until) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.outsideClass(this);
        }
    }

    /** The time to which something should be moved or corrected lies outside the class, whenever the tap was made. */
    record MovedOutsideClass(Instant to, Instant from, Instant until) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.movedOutsideClass(this);
        }
    }

    record ClassIsClosed() implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.classIsClosed(this);
        }
    }

    /** It brings words of guests, and those of the class are forgotten. */
    record GuestsForgotten() implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.guestsForgotten(this);
        }
    }

    /** Another command has this id already. @param seq what that one became */
    record IdTaken(long seq) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.idTaken(this);
        }
    }

    /** The class has begun, or had: its plan and its tables stay as they are. */
    record AlreadyBegun() implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.alreadyBegun(this);
        }
    }

    /** Something was made at the seat, whose guest is still here. */
    record SeatInUse(SeatNumber seat) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatInUse(this);
        }
    }

    /** The seat was taken away tonight. */
    record SeatIsAway(SeatNumber seat) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.seatIsAway(this);
        }
    }

    /** A class has one seat at least. */
    record LastSeat(SeatNumber seat) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.lastSeat(this);
        }
    }

    /** A value no thermometer or clock of a class can show. @param what the value's name */
    record Absurd(String what, double value, double least, double most) implements Refusal {
        @Override public <R> R match(Cases<R> cases) {
            return cases.absurd(this);
        }
    }

    /** One method a refusal: a new one stops the build until the edge has words for it. */
    interface Cases<R> {
        R noSuchSeat(NoSuchSeat refusal);

        R noSuchStep(NoSuchStep refusal);

        R noSuchActivity(NoSuchActivity refusal);

        R noSuchCandle(NoSuchCandle refusal);

        R noSuchEvent(NoSuchEvent refusal);

        R stepNotOpen(StepNotOpen refusal);

        R outOfOrder(OutOfOrder refusal);

        R stepIsFree(StepIsFree refusal);

        R alreadyFinished(AlreadyFinished refusal);

        R alreadySo(AlreadySo refusal);

        R notSo(NotSo refusal);

        R notAtTable(NotAtTable refusal);

        R sharesCandle(SharesCandle refusal);

        R notPoured(NotPoured refusal);

        R claimedBy(ClaimedBy refusal);

        R activityFull(ActivityFull refusal);

        R cannotUndo(CannotUndo refusal);

        R stepInUse(StepInUse refusal);

        R outsideClass(OutsideClass refusal);

        R movedOutsideClass(MovedOutsideClass refusal);

        R classIsClosed(ClassIsClosed refusal);

        R guestsForgotten(GuestsForgotten refusal);

        R idTaken(IdTaken refusal);

        R alreadyBegun(AlreadyBegun refusal);

        R seatInUse(SeatInUse refusal);

        R seatIsAway(SeatIsAway refusal);

        R lastSeat(LastSeat refusal);

        R absurd(Absurd refusal);
    }
}
