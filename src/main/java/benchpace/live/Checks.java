package benchpace.live;

import benchpace.live.Refusal.State;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;

/** What many of the {@link Rules} ask first. Each answers with what is in the way; empty if nothing is. */
final class Checks {
    private final LiveClass live;
    private final Progress progress;
    private final Instant now;

    Checks(LiveClass live, Instant now) {
        this.live = live;
        this.progress = live.progress();
        this.now = now;
    }

    static Optional<Refusal> refuse(Refusal refusal) {
        return Optional.of(refusal);
    }

    static Optional<Refusal> refuseIf(boolean wrong, Supplier<Refusal> refusal) {
        return wrong ? Optional.of(refusal.get()) : Optional.empty();
    }

    /** In the future, or before the class existed. */
    boolean outsideClass(Instant at) {
        return at.isBefore(live.earliest()) || at.isAfter(now.plus(Rules.CLOCK_SLACK));
    }

    // ---- seats

    Seat seat(SeatNumber number) {
        return live.seat(number).orElseThrow();
    }

    Optional<Refusal> knownSeat(SeatNumber number) {
        return live.takenAway(number).<Refusal>map(gone -> new Refusal.SeatIsAway(number)).or(() ->
                refuseIf(live.seat(number).isEmpty(), () -> new Refusal.NoSuchSeat(number, live.places())));
    }

    /** One that is new, or was taken away before anything was made there. */
    Optional<Refusal> addable(ClassEvent.Place place) {
        return refuseIf(live.seat(place.seat()).isPresent(), () -> new Refusal.AlreadySo(State.AT_THE_TABLE))
                .or(() -> live.takenAway(place.seat()).filter(gone -> !gone.finishes().isEmpty())
                        .map(gone -> new Refusal.SeatIsAway(place.seat())))
                .or(() -> place.candle().filter(candle -> live.plan().candle(candle).isEmpty())
                        .map(Refusal.NoSuchCandle::new));
    }

    /** Nothing was made there, or whoever made it has left. */
    Optional<Refusal> removable(SeatNumber number) {
        return knownSeat(number)
                .or(() -> refuseIf(live.seats().size() == 1, () -> new Refusal.LastSeat(number)))
                .or(() -> refuseIf(!seat(number).finishes().isEmpty() && !seat(number).hasLeft(),
                        () -> new Refusal.SeatInUse(number)));
    }

    /** What was told of a seat is not taken back while the seat itself is away, nor while more hangs on it. */
    Optional<Refusal> undoable(ClassEvent what) {
        if (what instanceof ClassEvent.SeatTakenAway taken) {
            return refuseIf(live.seat(taken.seat()).isPresent(), () -> new Refusal.AlreadySo(State.AT_THE_TABLE));
        }
        if (what instanceof ClassEvent.SeatAdded added) {
            return live.seat(added.seat()).isEmpty() ? Optional.empty() : removable(added.seat());
        }
        return what instanceof ClassEvent.AtSeat at && live.takenAway(at.seat()).isPresent()
                ? refuse(new Refusal.SeatIsAway(at.seat())) : Optional.empty();
    }

    Optional<Refusal> presentSeat(SeatNumber number) {
        return knownSeat(number).or(() -> refuseIf(!seat(number).present(),
                () -> new Refusal.NotAtTable(number, seat(number).hasLeft())));
    }

    /** At the table, and making a candle of its own. */
    Optional<Refusal> activeSeat(SeatNumber number) {
        return presentSeat(number).or(() -> seat(number).sharesWith()
                .map(host -> new Refusal.SharesCandle(number, host)));
    }

    /** Somebody who shares the candle of that seat and has not gone home. */
    Optional<SeatNumber> guestOf(SeatNumber host) {
        return live.seats().stream()
                .filter(s -> !s.hasLeft() && s.sharesWith().filter(host::equals).isPresent())
                .map(Seat::number)
                .findFirst();
    }

    // ---- steps, activities, events

    /** The seat has not finished that step, and may. */
    Optional<Refusal> finishable(SeatNumber number, StepId id) {
        Seat seat = seat(number);
        Optional<Step> found = live.plan().step(id);
        if (found.isEmpty()) {
            return refuse(new Refusal.NoSuchStep(id));
        }
        Step step = found.get();
        if (seat.finished(id)) {
            return refuse(new Refusal.AlreadyFinished(number, id, seat.finishes().get(id).seq()));
        }
        if (step.kind() == StepKind.CURE && progress.pouredAt(seat).isEmpty()) {
            return refuse(new Refusal.NotPoured(number));
        }
        if (progress.isOpen(step) || live.plan().indexOf(id) < live.furthestOpened()) {
            return Optional.empty();
        }
        Optional<StepId> before = progress.firstClosedLedBefore(id);
        return refuse(before.<Refusal>map(first -> new Refusal.OutOfOrder(id, first))
                .orElseGet(() -> new Refusal.StepNotOpen(id)));
    }

    Optional<Refusal> knownActivity(ActivityId id) {
        return refuseIf(live.plan().activity(id).isEmpty(), () -> new Refusal.NoSuchActivity(id));
    }

    // ---- the candle

    /** Something of its own is in the vessel, and was at that time. */
    Optional<Refusal> poured(SeatNumber number, Instant at) {
        return knownSeat(number).or(() -> {
            Seat seat = seat(number);
            if (seat.sharesWith().isPresent()) {
                return refuse(new Refusal.SharesCandle(number, seat.sharesWith().get()));
            }
            return refuseIf(progress.pouredAt(seat).filter(t -> !t.isAfter(at)).isEmpty(),
                    () -> new Refusal.NotPoured(number));
        });
    }
}
