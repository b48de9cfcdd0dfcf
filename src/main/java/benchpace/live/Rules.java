package benchpace.live;

import static benchpace.live.Checks.refuse;
import static benchpace.live.Checks.refuseIf;

import benchpace.live.Refusal.State;
import benchpace.plan.Activity;
import benchpace.plan.Candle;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Decides what a command means for a class. Pure: same state, command, instant and plausibility, same answer. A command
 * that was recorded before is the caller's to recognise ({@link LiveClass#seqOf}); here every command is taken as new.
 */
public final class Rules implements ClassEvent.Cases<Optional<Refusal>> {
    /** How far ahead of the class's time a tap may claim to have been made: what clock estimates differ by. */
    static final Duration CLOCK_SLACK = Duration.ofSeconds(5);
    /** What a thermometer pointed at a candle may show, degrees Celsius. */
    static final double COLDEST = 0;
    static final double HOTTEST = 130;
    private static final int LONGEST_EXTENSION = 60;

    private final LiveClass live;
    private final Progress progress;
    private final Checks checks;
    private final Command command;
    private final Instant now;

    private Rules(LiveClass live, Command command, Instant now) {
        this.live = live;
        this.progress = live.progress();
        this.checks = new Checks(live, now);
        this.command = command;
        this.now = now;
    }

    /**
     * The whole decision.
     *
     * @param now          the class's time; the command may claim one that is later by {@link #CLOCK_SLACK} at most
     * @param plausibility asked last, of what nothing else is in the way of
     */
    public static Decision decide(LiveClass live, Command command, Instant now, Plausibility plausibility) {
        Rules rules = new Rules(live, command, now);
        Optional<Refusal> refusal = refuseIf(rules.checks.outsideClass(command.at()),
                () -> new Refusal.OutsideClass(command.at(), live.earliest(), now))
                .or(rules::closed)
                .or(() -> command.wish().match(rules))
                .or(() -> plausibility.refusal(live, command.wish()));
        return refusal.<Decision>map(Decision.Refused::new).orElseGet(() -> new Decision.Accepted(command.wish()));
    }

    private Optional<Refusal> closed() {
        return refuseIf(live.closedAt().isPresent() && !EventTrait.AFTER_THE_CLOSE.of(command.wish()),
                Refusal.ClassIsClosed::new);
    }

    private Seat seat(SeatNumber number) {
        return checks.seat(number);
    }

    private Optional<Refusal> poured(SeatNumber number) {
        return checks.poured(number, command.at());
    }

    // ---- the class

    @Override public Optional<Refusal> classCreated(ClassEvent.ClassCreated event) {
        return refuse(new Refusal.AlreadySo(State.CREATED));
    }

    @Override public Optional<Refusal> classSetUpAgain(ClassEvent.ClassSetUpAgain event) {
        return refuseIf(live.begun() || live.wasBegun() && !event.setup().plan().equals(live.plan()),
                Refusal.AlreadyBegun::new)
                .or(() -> refuseIf(event.setup().equals(live.setup()), () -> new Refusal.AlreadySo(State.SET_UP)));
    }

    @Override public Optional<Refusal> stepOpened(ClassEvent.StepOpened event) {
        Optional<Step> step = live.plan().step(event.step());
        if (step.isEmpty()) {
            return refuse(new Refusal.NoSuchStep(event.step()));
        }
        if (!step.get().led()) {
            return refuse(new Refusal.StepIsFree(event.step()));
        }
        if (live.openedAt(event.step()).isPresent()) {
            return refuse(new Refusal.AlreadySo(State.OPEN));
        }
        if (live.plan().indexOf(event.step()) < live.furthestOpened()) {
            return refuse(new Refusal.AlreadySo(State.PASSED));
        }
        return ledStepSkipped(step.get()).map(first -> new Refusal.OutOfOrder(event.step(), first));
    }

    /** A talk may be left out; any other led step has to be opened first. */
    private Optional<StepId> ledStepSkipped(Step step) {
        List<Step> steps = live.plan().steps();
        return steps.subList(live.furthestOpened() + 1, live.plan().indexOf(step.id())).stream()
                .filter(s -> s.led() && s.kind() != StepKind.TALK)
                .map(Step::id)
                .findFirst();
    }

    /** No client's to wish for: the board writes it when it is told which clock is right. */
    @Override public Optional<Refusal> clockShifted(ClassEvent.ClockShifted event) {
        return refuse(new Refusal.AlreadySo(State.SET_RIGHT));
    }

    @Override public Optional<Refusal> classNoted(ClassEvent.ClassNoted event) {
        return Optional.empty();
    }

    @Override public Optional<Refusal> classClosed(ClassEvent.ClassClosed event) {
        return refuseIf(live.closedAt().isPresent(), () -> new Refusal.AlreadySo(State.CLOSED));
    }

    // ---- steps at a seat

    @Override public Optional<Refusal> stepFinished(ClassEvent.StepFinished event) {
        return checks.activeSeat(event.seat()).or(() -> checks.finishable(event.seat(), event.step()));
    }

    @Override public Optional<Refusal> stillWorking(ClassEvent.StillWorking event) {
        return checks.activeSeat(event.seat()).or(() -> unfinished(event.seat(), event.step()));
    }

    @Override public Optional<Refusal> doneHinted(ClassEvent.DoneHinted event) {
        return checks.activeSeat(event.seat()).or(() -> checks.finishable(event.seat(), event.step()))
                .or(() -> refuseIf(seat(event.seat()).hint().filter(h -> h.step().equals(event.step())).isPresent(),
                        () -> new Refusal.AlreadySo(State.TOLD)));
    }

    @Override public Optional<Refusal> guestsMayTell(ClassEvent.GuestsMayTell event) {
        return refuseIf(live.guestsMayTell() == event.on(),
                () -> new Refusal.AlreadySo(event.on() ? State.ALLOWED : State.SWITCHED_OFF));
    }

    private Optional<Refusal> unfinished(SeatNumber number, StepId step) {
        if (live.plan().step(step).isEmpty()) {
            return refuse(new Refusal.NoSuchStep(step));
        }
        Seat.Finish finish = seat(number).finishes().get(step);
        return refuseIf(finish != null, () -> new Refusal.AlreadyFinished(number, step, finish.seq()));
    }

    // ---- undoing and correcting

    @Override public Optional<Refusal> undone(ClassEvent.Undone event) {
        Optional<Recorded> target = live.recorded(event.seq());
        if (target.isEmpty()) {
            return refuse(new Refusal.NoSuchEvent(event.seq()));
        }
        if (live.isUndone(event.seq())) {
            return refuse(new Refusal.AlreadySo(State.UNDONE));
        }
        ClassEvent what = target.get().event();
        if (what instanceof ClassEvent.ClassCreated || what instanceof ClassEvent.ClassSetUpAgain
                || what instanceof ClassEvent.Undone
                || what instanceof ClassEvent.ClockShifted) {
            return refuse(new Refusal.CannotUndo(event.seq()));
        }
        if (live.closedAt().isPresent() && !(what instanceof ClassEvent.ClassClosed)) {
            return refuse(new Refusal.ClassIsClosed());
        }
        return what instanceof ClassEvent.StepOpened opened ? inUse(opened.step()) : checks.undoable(what);
    }

    /** A step that seats have finished stays open: taking it back would leave them ahead of the class. */
    private Optional<Refusal> inUse(StepId step) {
        int index = live.plan().indexOf(step);
        List<SeatNumber> seats = live.seats().stream()
                .filter(s -> progress.furthestFinished(s) >= index)
                .map(Seat::number)
                .toList();
        return refuseIf(!seats.isEmpty(), () -> new Refusal.StepInUse(step, seats));
    }

    @Override public Optional<Refusal> tapRetimed(ClassEvent.TapRetimed event) {
        return correctable(event.seq()).or(() -> refuseIf(checks.outsideClass(event.to()),
                () -> new Refusal.MovedOutsideClass(event.to(), live.earliest(), now)));
    }

    @Override public Optional<Refusal> tapReseated(ClassEvent.TapReseated event) {
        return correctable(event.seq()).or(() -> {
            if (!(live.recorded(event.seq()).orElseThrow().event() instanceof ClassEvent.StepFinished finished)) {
                return refuse(new Refusal.CannotUndo(event.seq()));
            }
            return checks.activeSeat(event.to()).or(() -> checks.finishable(event.to(), finished.step()));
        });
    }

    private Optional<Refusal> correctable(long seq) {
        Optional<Recorded> target = live.recorded(seq);
        if (target.isEmpty()) {
            return refuse(new Refusal.NoSuchEvent(seq));
        }
        if (live.isUndone(seq)) {
            return refuse(new Refusal.AlreadySo(State.UNDONE));
        }
        ClassEvent what = target.get().event();
        boolean tap = what instanceof ClassEvent.StepOpened || what instanceof ClassEvent.AtSeat;
        return refuseIf(!tap, () -> new Refusal.CannotUndo(seq));
    }

    // ---- who is at the table

    @Override public Optional<Refusal> seatAdded(ClassEvent.SeatAdded event) {
        return checks.addable(event.place());
    }

    @Override public Optional<Refusal> seatTakenAway(ClassEvent.SeatTakenAway event) {
        return checks.removable(event.seat());
    }

    @Override public Optional<Refusal> guestCorrected(ClassEvent.GuestCorrected event) {
        return checks.knownSeat(event.seat()).or(() -> {
            Seat seat = seat(event.seat());
            return refuseIf(seat.name().equals(event.name()) && seat.party().equals(event.party())
                    && seat.mind().equals(event.note()), () -> new Refusal.AlreadySo(State.TOLD));
        });
    }

    @Override public Optional<Refusal> seatPaused(ClassEvent.SeatPaused event) {
        return checks.activeSeat(event.seat()).or(() -> refuseIf(seat(event.seat()).pausedSince().isPresent(),
                () -> new Refusal.AlreadySo(State.PAUSED)));
    }

    @Override public Optional<Refusal> seatResumed(ClassEvent.SeatResumed event) {
        return checks.activeSeat(event.seat()).or(() -> refuseIf(seat(event.seat()).pausedSince().isEmpty(),
                () -> new Refusal.NotSo(State.PAUSED)));
    }

    @Override public Optional<Refusal> seatExpected(ClassEvent.SeatExpected event) {
        return checks.knownSeat(event.seat()).or(() -> {
            Seat seat = seat(event.seat());
            if (!seat.finishes().isEmpty()) {
                Seat.Finish any = seat.finishes().values().iterator().next();
                StepId step = seat.finishes().keySet().iterator().next();
                return refuse(new Refusal.AlreadyFinished(event.seat(), step, any.seq()));
            }
            return refuseIf(seat.presence() == Seat.Presence.EXPECTED, () -> new Refusal.AlreadySo(State.EXPECTED));
        });
    }

    @Override public Optional<Refusal> seatArrived(ClassEvent.SeatArrived event) {
        return checks.knownSeat(event.seat());
    }

    @Override public Optional<Refusal> seatLeft(ClassEvent.SeatLeft event) {
        return checks.knownSeat(event.seat()).or(() -> refuseIf(
                seat(event.seat()).hasLeft(),
                () -> new Refusal.AlreadySo(State.GONE)));
    }

    @Override public Optional<Refusal> seatPaired(ClassEvent.SeatPaired event) {
        return checks.activeSeat(event.seat()).or(() -> checks.knownSeat(event.with())).or(() -> {
            Seat with = seat(event.with());
            if (with.hasLeft()) {
                return refuse(new Refusal.NotAtTable(event.with(), true));
            }
            if (event.seat().equals(event.with())) {
                return refuse(new Refusal.SharesCandle(event.with(), event.seat()));
            }
            return with.sharesWith().<Refusal>map(host -> new Refusal.SharesCandle(event.with(), host))
                    .or(() -> checks.guestOf(event.with()).map(guest -> new Refusal.SharesCandle(guest, event.with())));
        });
    }

    @Override public Optional<Refusal> seatUnpaired(ClassEvent.SeatUnpaired event) {
        return checks.knownSeat(event.seat()).or(() -> refuseIf(seat(event.seat()).sharesWith().isEmpty(),
                () -> new Refusal.NotSo(State.SHARED)));
    }

    @Override public Optional<Refusal> seatNoted(ClassEvent.SeatNoted event) {
        return checks.knownSeat(event.seat());
    }

    // ---- the candle

    @Override public Optional<Refusal> pouredAgain(ClassEvent.PouredAgain event) {
        return poured(event.seat());
    }

    @Override public Optional<Refusal> candleChosen(ClassEvent.CandleChosen event) {
        return checks.knownSeat(event.seat()).or(() -> refuseIf(live.plan().candle(event.candle()).isEmpty(),
                () -> new Refusal.NoSuchCandle(event.candle())));
    }

    @Override public Optional<Refusal> roomRead(ClassEvent.RoomRead event) {
        return outside("celsius", event.celsius(), Candle.COLDEST_ROOM, Candle.HOTTEST_ROOM);
    }

    @Override public Optional<Refusal> pourRead(ClassEvent.PourRead event) {
        return outside("celsius", event.celsius(), Candle.COLDEST_POUR, Candle.HOTTEST_POUR);
    }

    private static Optional<Refusal> outside(String what, double value, double least, double most) {
        return refuseIf(!(value >= least && value <= most), () -> new Refusal.Absurd(what, value, least, most));
    }

    @Override public Optional<Refusal> temperatureRead(ClassEvent.TemperatureRead event) {
        return poured(event.seat()).or(() -> {
            boolean possible = event.celsius() >= COLDEST && event.celsius() <= HOTTEST;
            return refuseIf(!possible, () -> new Refusal.Absurd("celsius", event.celsius(), COLDEST, HOTTEST));
        });
    }

    @Override public Optional<Refusal> skinSeen(ClassEvent.SkinSeen event) {
        return poured(event.seat()).or(() -> refuseIf(seat(event.seat()).skinSeenAt().isPresent(),
                () -> new Refusal.AlreadySo(State.SEEN)));
    }

    @Override public Optional<Refusal> judgedSet(ClassEvent.JudgedSet event) {
        return poured(event.seat()).or(() -> refuseIf(seat(event.seat()).judgedSetAt().isPresent(),
                () -> new Refusal.AlreadySo(State.JUDGED_SET)));
    }

    // ---- help

    @Override public Optional<Refusal> helpClaimed(ClassEvent.HelpClaimed event) {
        return checks.activeSeat(event.seat()).or(() -> seat(event.seat()).claim()
                .filter(claim -> claim.holds(command.at())).map(claim -> claim.helper().equals(event.helper())
                        ? new Refusal.AlreadySo(State.CLAIMED)
                        : new Refusal.ClaimedBy(event.seat(), claim.helper())));
    }

    @Override public Optional<Refusal> helpSorted(ClassEvent.HelpSorted event) {
        return checks.knownSeat(event.seat()).or(() -> refuseIf(seat(event.seat()).claim().isEmpty(),
                () -> new Refusal.NotSo(State.CLAIMED)));
    }

    // ---- activities of the wait

    @Override public Optional<Refusal> activityOpened(ClassEvent.ActivityOpened event) {
        return checks.knownActivity(event.activity()).or(() -> refuseIf(live.activity(event.activity()).open(),
                () -> new Refusal.AlreadySo(State.OPEN)));
    }

    @Override public Optional<Refusal> activityClosed(ClassEvent.ActivityClosed event) {
        return checks.knownActivity(event.activity()).or(() -> refuseIf(!live.activity(event.activity()).open(),
                () -> new Refusal.NotSo(State.OPEN)));
    }

    @Override public Optional<Refusal> activityExtended(ClassEvent.ActivityExtended event) {
        return checks.knownActivity(event.activity()).or(() -> refuseIf(
                event.minutes() < 1 || event.minutes() > LONGEST_EXTENSION,
                () -> new Refusal.Absurd("minutes", event.minutes(), 1, LONGEST_EXTENSION)));
    }

    @Override public Optional<Refusal> activityMoved(ClassEvent.ActivityMoved event) {
        return checks.knownActivity(event.activity())
                .or(() -> refuseIf(live.activity(event.activity()).open(), () -> new Refusal.AlreadySo(State.OPEN)))
                .or(() -> {
                    Instant last = now.plus(Duration.ofHours(12));
                    boolean possible = !event.to().isBefore(now.minus(CLOCK_SLACK)) && !event.to().isAfter(last);
                    return refuseIf(!possible, () -> new Refusal.MovedOutsideClass(event.to(), now, last));
                });
    }

    @Override public Optional<Refusal> activitySkipped(ClassEvent.ActivitySkipped event) {
        return checks.knownActivity(event.activity())
                .or(() -> refuseIf(live.activity(event.activity()).open(), () -> new Refusal.AlreadySo(State.OPEN)))
                .or(() -> refuseIf(live.activity(event.activity()).skipped(),
                        () -> new Refusal.AlreadySo(State.SKIPPED)));
    }

    @Override public Optional<Refusal> activityJoined(ClassEvent.ActivityJoined event) {
        return checks.presentSeat(event.seat()).or(() -> checks.knownActivity(event.activity())).or(() -> {
            Activity activity = live.plan().activity(event.activity()).orElseThrow();
            List<SeatNumber> taken = live.seats().stream()
                    .filter(s -> s.activity().filter(a -> a.activity().equals(event.activity())).isPresent())
                    .map(Seat::number)
                    .toList();
            if (taken.contains(event.seat())) {
                return refuse(new Refusal.AlreadySo(State.TAKING_PART));
            }
            return refuseIf(taken.size() >= activity.places(),
                    () -> new Refusal.ActivityFull(event.activity(), activity.places()));
        });
    }

    @Override public Optional<Refusal> activityQuit(ClassEvent.ActivityQuit event) {
        return checks.knownSeat(event.seat()).or(() -> checks.knownActivity(event.activity())).or(() -> refuseIf(
                seat(event.seat()).activity().filter(a -> a.activity().equals(event.activity())).isEmpty(),
                () -> new Refusal.NotSo(State.TAKING_PART)));
    }
}
