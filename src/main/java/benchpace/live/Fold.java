package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Adds events up to a {@link LiveClass}. Undoing and correcting work on the list of events before it is added up, so
 * whatever an undone tap had changed is as if it had never been.
 */
final class Fold implements ClassEvent.Cases<Void> {
    private final Map<StepId, Instant> opened = new LinkedHashMap<>();
    private final SortedMap<SeatNumber, SeatFold> seats = new TreeMap<>();
    private final Map<ActivityId, ActivityRun> activities = new HashMap<>();
    private final List<LiveClass.Temperature> roomReadings = new ArrayList<>();
    private final List<LiveClass.Temperature> pourReadings = new ArrayList<>();
    private final List<Seat.Note> notes = new ArrayList<>();
    private ClassEvent.ClassCreated created;
    private boolean guestsMayTell;
    private Optional<Instant> closedAt = Optional.empty();
    private Recorded current;

    private Fold() { }

    static LiveClass of(List<Recorded> log) {
        for (int i = 0; i < log.size(); i++) {
            if (log.get(i).seq() != i + 1) {
                throw new IllegalArgumentException(
                        "event " + log.get(i).seq() + " stands where event " + (i + 1) + " should be");
            }
        }
        List<Recorded> history = ClockShifts.applied(log);
        if (history.isEmpty() || !(history.get(0).event() instanceof ClassEvent.ClassCreated created)) {
            throw new IllegalArgumentException("a class begins with its creation");
        }
        Set<Long> undone = undone(history);
        Fold fold = new Fold();
        fold.created = created;
        List<Recorded> corrected = corrected(history, undone);
        ReachFold reach = new ReachFold(created.plan(), begins(created, corrected.get(0).at()));
        for (Recorded recorded : corrected) {
            if (!undone.contains(recorded.seq())) {
                fold.current = recorded;
                recorded.event().match(fold);
                reach.see(fold.opened, fold.seats.values(), recorded.at());
            }
        }
        return fold.freeze(reach.freeze(), log, history, corrected, undone);
    }

    private static Instant begins(ClassEvent.ClassCreated created, Instant at) {
        return at.isAfter(created.startsAt()) ? at : created.startsAt();
    }

    private static Set<Long> undone(List<Recorded> history) {
        Set<Long> undone = new HashSet<>();
        for (Recorded recorded : history) {
            if (recorded.event() instanceof ClassEvent.Undone undo) {
                undone.add(undo.seq());
            }
        }
        return undone;
    }

    private static List<Recorded> corrected(List<Recorded> history, Set<Long> undone) {
        List<Recorded> corrected = new ArrayList<>(history);
        for (Recorded recorded : history) {
            if (undone.contains(recorded.seq())) {
                continue;
            }
            if (recorded.event() instanceof ClassEvent.TapRetimed retimed) {
                replace(corrected, retimed.seq(), tap -> tap.at(retimed.to()));
            } else if (recorded.event() instanceof ClassEvent.TapReseated reseated) {
                replace(corrected, reseated.seq(), tap -> tap.event() instanceof ClassEvent.StepFinished f
                        ? tap.event(new ClassEvent.StepFinished(reseated.to(), f.step())) : tap);
            }
        }
        return corrected;
    }

    private static void replace(List<Recorded> history, long seq, UnaryOperator<Recorded> by) {
        int index = (int) seq - 1;
        if (index >= 0 && index < history.size()) {
            history.set(index, by.apply(history.get(index)));
        }
    }

    private LiveClass freeze(ClassReach reach, List<Recorded> log, List<Recorded> history,
                             List<Recorded> corrected, Set<Long> undone) {
        SortedMap<SeatNumber, Seat> frozen = new TreeMap<>();
        Plan plan = created.plan();
        seats.forEach((number, draft) -> {
            draft.candle.settle(Progress.firstPour(plan, draft.candle.finishes));
            frozen.put(number, draft.freeze());
        });
        return new LiveClass(plan, created.name(), created.startsAt(), opened, frozen, activities,
                new LiveClass.Told(notes, roomReadings, pourReadings, guestsMayTell), closedAt, reach,
                log, history, corrected, undone);
    }

    private SeatFold seat(ClassEvent.AtSeat event) {
        SeatFold draft = seats.get(event.seat());
        if (draft == null) {
            throw new IllegalStateException("event " + current.seq() + " names seat " + event.seat()
                    + ", which the class does not have");
        }
        return draft;
    }

    private void activity(ActivityId id, UnaryOperator<ActivityRun> change) {
        activities.put(id, change.apply(activities.getOrDefault(id, ActivityRun.UNTOUCHED)));
    }

    private static final Void DONE = null;

    @Override public Void classCreated(ClassEvent.ClassCreated event) {
        Instant since = current.at().isBefore(event.startsAt()) ? current.at() : event.startsAt();
        event.seats().forEach(p -> seats.put(p.seat(), new SeatFold(p.seat(), p.name(), since)));
        return DONE;
    }

    @Override public Void stepOpened(ClassEvent.StepOpened event) {
        opened.put(event.step(), current.at());
        return DONE;
    }

    @Override public Void stepFinished(ClassEvent.StepFinished event) {
        seat(event).candle.finish(event.step(), created.plan().indexOf(event.step()), current.at(), current.seq());
        return DONE;
    }

    @Override public Void undone(ClassEvent.Undone event) {
        return DONE;
    }

    @Override public Void tapRetimed(ClassEvent.TapRetimed event) {
        return DONE;
    }

    @Override public Void tapReseated(ClassEvent.TapReseated event) {
        return DONE;
    }

    @Override public Void seatPaused(ClassEvent.SeatPaused event) {
        seat(event).candle.pause(current.at());
        return DONE;
    }

    @Override public Void seatResumed(ClassEvent.SeatResumed event) {
        seat(event).candle.endPause(current.at());
        return DONE;
    }

    @Override public Void seatExpected(ClassEvent.SeatExpected event) {
        SeatFold draft = seat(event);
        handOver(draft);
        draft.goAway(Seat.Presence.EXPECTED, current.at());
        return DONE;
    }

    @Override public Void seatArrived(ClassEvent.SeatArrived event) {
        SeatFold draft = seat(event);
        if (!event.name().isEmpty()) {
            draft.name = event.name();
        }
        boolean named = draft.present() && !event.name().isEmpty(); // who is there and gets a name was there before
        if (!draft.present() || !named && draft.candle.finishes.isEmpty()) {
            draft.presence(Seat.Presence.PRESENT, current.at());
        }
        draft.sharesWith.map(seats::get).filter(host -> !host.present()).ifPresent(this::handOver);
        return DONE;
    }

    @Override public Void seatLeft(ClassEvent.SeatLeft event) {
        SeatFold draft = seat(event);
        handOver(draft);
        draft.goAway(Seat.Presence.LEFT, current.at());
        return DONE;
    }

    /** Who shares makes no candle and hosts nobody, and who hosts makes one: also after an undo in between. */
    @Override public Void seatPaired(ClassEvent.SeatPaired event) {
        SeatFold host = seat(event);
        SeatFold guest = seats.get(event.with());
        if (host.sharesWith.isPresent()) {
            host.standAlone(current.at());
        }
        sharing(guest.number).forEach(s -> s.share(host.number, current.at()));
        guest.share(host.number, current.at());
        return DONE;
    }

    @Override public Void seatUnpaired(ClassEvent.SeatUnpaired event) {
        seat(event).standAlone(current.at());
        return DONE;
    }

    private List<SeatFold> sharing(SeatNumber host) {
        return seats.values().stream().filter(s -> s.sharesWith.filter(host::equals).isPresent()).toList();
    }

    /** The candle stays with who is left of the pair; of several, the lowest seat makes it and the others share it. */
    private void handOver(SeatFold host) {
        List<SeatFold> sharing = sharing(host.number);
        sharing.stream().filter(SeatFold::present).findFirst().ifPresent(heir -> {
            sharing.forEach(s -> s.sharesWith = Optional.of(heir.number));
            heir.takeOver(host, current.at());
        });
    }

    @Override public Void pouredAgain(ClassEvent.PouredAgain event) {
        seat(event).candle.pourAgain(current.at());
        return DONE;
    }

    @Override public Void seatNoted(ClassEvent.SeatNoted event) {
        seat(event).notes.add(new Seat.Note(current.at(), event.text(), current.seq()));
        return DONE;
    }

    @Override public Void classNoted(ClassEvent.ClassNoted event) {
        notes.add(new Seat.Note(current.at(), event.text(), current.seq()));
        return DONE;
    }

    @Override public Void candleChosen(ClassEvent.CandleChosen event) {
        seat(event).candle.chosen = Optional.of(event.candle());
        return DONE;
    }

    @Override public Void roomRead(ClassEvent.RoomRead event) {
        roomReadings.add(new LiveClass.Temperature(current.at(), event.celsius()));
        return DONE;
    }

    @Override public Void pourRead(ClassEvent.PourRead event) {
        pourReadings.add(new LiveClass.Temperature(current.at(), event.celsius()));
        return DONE;
    }

    @Override public Void temperatureRead(ClassEvent.TemperatureRead event) {
        seat(event).candle.readings.add(new Seat.Reading(current.at(), event.celsius(), current.seq()));
        return DONE;
    }

    @Override public Void skinSeen(ClassEvent.SkinSeen event) {
        seat(event).candle.skinSeenAt = Optional.of(current.at());
        return DONE;
    }

    @Override public Void judgedSet(ClassEvent.JudgedSet event) {
        seat(event).candle.judgedSetAt = Optional.of(current.at());
        return DONE;
    }

    @Override public Void helpClaimed(ClassEvent.HelpClaimed event) {
        seat(event).candle.claim = Optional.of(new Seat.Claim(event.helper(), current.at()));
        return DONE;
    }

    @Override public Void helpSorted(ClassEvent.HelpSorted event) {
        seat(event).candle.claim = Optional.empty();
        return DONE;
    }

    @Override public Void stillWorking(ClassEvent.StillWorking event) {
        seat(event).candle.stillAt.add(new Seat.Answer(event.step(), current.at()));
        seat(event).candle.hint = Optional.empty();
        return DONE;
    }

    @Override public Void doneHinted(ClassEvent.DoneHinted event) {
        seat(event).candle.hint = Optional.of(new Seat.Answer(event.step(), current.at()));
        return DONE;
    }

    @Override public Void guestsMayTell(ClassEvent.GuestsMayTell event) {
        guestsMayTell = event.on();
        return DONE;
    }

    @Override public Void activityOpened(ClassEvent.ActivityOpened event) {
        activity(event.activity(), run -> run.opened(current.at()));
        return DONE;
    }

    @Override public Void activityClosed(ClassEvent.ActivityClosed event) {
        activity(event.activity(), run -> run.closed(current.at()));
        seats.values().stream()
                .filter(s -> s.isAt(event.activity()))
                .forEach(s -> s.quit(current.at()));
        return DONE;
    }

    @Override public Void activityExtended(ClassEvent.ActivityExtended event) {
        activity(event.activity(), run -> run.extended(current.at(), Duration.ofMinutes(event.minutes())));
        return DONE;
    }

    @Override public Void activityMoved(ClassEvent.ActivityMoved event) {
        activity(event.activity(), run -> run.moved(current.at(), event.to()));
        return DONE;
    }

    @Override public Void activitySkipped(ClassEvent.ActivitySkipped event) {
        activity(event.activity(), run -> run.skipped(current.at()));
        return DONE;
    }

    @Override public Void activityJoined(ClassEvent.ActivityJoined event) {
        seat(event).join(event.activity(), current.at());
        return DONE;
    }

    @Override public Void activityQuit(ClassEvent.ActivityQuit event) {
        if (seat(event).isAt(event.activity())) {
            seat(event).quit(current.at());
        }
        return DONE;
    }

    /** It was moved by before anything was added up. */
    @Override public Void clockShifted(ClassEvent.ClockShifted event) {
        return DONE;
    }

    @Override public Void classClosed(ClassEvent.ClassClosed event) {
        closedAt = Optional.of(current.at());
        return DONE;
    }
}
