package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
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
    /** Places that are not at the table; what is told of one counts should it come there. */
    private final SortedMap<SeatNumber, SeatFold> away = new TreeMap<>();
    private final Set<SeatNumber> takenAway = new TreeSet<>();
    private Setup setup;
    private ReachFold reach;
    private boolean guestsMayTell;
    private Optional<Instant> closedAt = Optional.empty();
    private Instant createdAt;
    private Recorded current;

    private Fold() { }

    /** Adds a whole log up. */
    static LiveClass of(List<Recorded> log) {
        for (int i = 0; i < log.size(); i++) {
            if (log.get(i).seq() != i + 1) {
                throw new IllegalArgumentException(
                        "event " + log.get(i).seq() + " stands where event " + (i + 1) + " should be");
            }
        }
        List<Recorded> history = ClockShifts.applied(log);
        if (history.isEmpty() || !(history.get(0).event() instanceof ClassEvent.ClassCreated)) {
            throw new IllegalArgumentException("a class begins with its creation");
        }
        Set<Long> undone = Corrections.undone(history);
        Fold fold = new Fold();
        List<Recorded> corrected = Corrections.applied(history, undone);
        fold.createdAt = corrected.get(0).at();
        for (Recorded recorded : corrected) {
            if (!undone.contains(recorded.seq())) {
                fold.add(recorded);
            }
        }
        return fold.freeze(log, history, corrected, undone);
    }

    /**
     * The same as the whole log with one more event added up, without adding it all up again: goes on with what stands
     * here. An event that changes what was before it asks for the whole.
     */
    LiveClass goOn(LiveClass from, Recorded next) {
        List<Recorded> log = Corrections.with(from.log(), next);
        if (Corrections.reachBack(from, next)) {
            return of(log);
        }
        add(next);
        return freeze(log, Corrections.with(from.history(), next), Corrections.with(from.corrected(), next),
                from.undone());
    }

    private void add(Recorded recorded) {
        current = recorded;
        recorded.event().match(this);
        reach.see(opened, seats.values(), recorded.at());
    }

    private LiveClass freeze(List<Recorded> log, List<Recorded> history, List<Recorded> corrected, Set<Long> undone) {
        SortedMap<SeatNumber, Seat> gone = new TreeMap<>();
        takenAway.forEach(number -> gone.put(number, frozen(away.get(number))));
        SortedMap<SeatNumber, Seat> frozen = new TreeMap<>();
        seats.forEach((number, draft) -> frozen.put(number, frozen(draft)));
        return new LiveClass(setup, opened, frozen, gone, activities,
                new LiveClass.Told(notes, roomReadings, pourReadings, guestsMayTell), closedAt, reach.freeze(),
                log, history, corrected, undone, this);
    }

    private Seat frozen(SeatFold draft) {
        return draft.freeze(Progress.firstPour(setup.plan(), draft.candle.finishes));
    }

    private SeatFold seat(ClassEvent.AtSeat event) {
        SeatFold there = seats.get(event.seat());
        return there != null ? there : away(event.seat());
    }

    private SeatFold away(SeatNumber number) {
        return away.computeIfAbsent(number, n -> new SeatFold(n, current.at()));
    }

    private void activity(ActivityId id, UnaryOperator<ActivityRun> change) {
        activities.put(id, change.apply(activities.getOrDefault(id, ActivityRun.UNTOUCHED)));
    }

    private static final Void DONE = null;

    @Override public Void classCreated(ClassEvent.ClassCreated event) {
        setUp(event.setup());
        return DONE;
    }

    /** Who sits at a place that stays is who sat there; what was said of activities that are no more counts no more. */
    @Override public Void classSetUpAgain(ClassEvent.ClassSetUpAgain event) {
        away.putAll(seats);
        seats.clear();
        takenAway.clear();
        setUp(event.setup());
        activities.keySet().removeIf(id -> setup.plan().activity(id).isEmpty());
        seats.values().forEach(s -> s.keepStints(id -> setup.plan().activity(id).isPresent()));
        nobodySharesWithNobody();
        return DONE;
    }

    private void setUp(Setup as) {
        setup = as;
        reach = new ReachFold(as.plan(), createdAt.isAfter(as.startsAt()) ? createdAt : as.startsAt());
        Instant since = current.at().isBefore(as.startsAt()) ? current.at() : as.startsAt();
        as.seats().forEach(place -> {
            SeatFold known = away.remove(place.seat());
            seats.put(place.seat(), (known == null ? new SeatFold(place.seat(), since) : known).describe(place));
        });
    }

    @Override public Void seatAdded(ClassEvent.SeatAdded event) {
        SeatFold draft = seat(event).describe(event.place());
        away.remove(event.seat());
        takenAway.remove(event.seat());
        if (seats.putIfAbsent(event.seat(), draft) == null) {
            draft.sharesWith = Optional.empty();
            draft.presence(Seat.Presence.PRESENT, current.at());
        }
        return DONE;
    }

    @Override public Void seatTakenAway(ClassEvent.SeatTakenAway event) {
        SeatFold draft = seats.get(event.seat());
        if (draft != null) {
            handOver(draft);
            draft.goAway(draft.presence, current.at());
            away.put(event.seat(), seats.remove(event.seat()));
            takenAway.add(event.seat());
            nobodySharesWithNobody();
        }
        return DONE;
    }

    private void nobodySharesWithNobody() {
        seats.values().stream().filter(s -> s.sharesWith.filter(host -> !seats.containsKey(host)).isPresent())
                .forEach(s -> s.standAlone(current.at()));
    }

    @Override public Void guestCorrected(ClassEvent.GuestCorrected event) {
        seat(event).correct(event.name(), event.party(), event.note());
        return DONE;
    }

    @Override public Void stepOpened(ClassEvent.StepOpened event) {
        opened.put(event.step(), current.at());
        return DONE;
    }

    @Override public Void stepFinished(ClassEvent.StepFinished event) {
        seat(event).candle.finish(event.step(), setup.plan().indexOf(event.step()), current.at(), current.seq());
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
            draft.name = Nameless.shown(event.name());
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
        if (guest == null || !seats.containsKey(event.seat())) {
            return DONE; // one of them is not at the table after all
        }
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
