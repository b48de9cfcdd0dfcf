package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A class as its events have made it: immutable, and the same again whenever the same events are added up. Where a seat
 * stands is in {@link Progress}.
 */
public final class LiveClass {
    private static final Duration LEFT_OPEN_AFTER = Duration.ofHours(12);
    /** So long after the last thing that happened at a seat, or the last step opened, everybody went home. */
    private static final Duration GONE_AFTER = Duration.ofHours(1);

    /** A thermometer's reading, degrees Celsius. */
    public record Temperature(Instant at, double celsius) { }

    /** What was told about the class as a whole. */
    record Told(List<Seat.Note> notes, List<Temperature> room, List<Temperature> pour, boolean guestsMayTell) {
        Told {
            notes = List.copyOf(notes);
            room = List.copyOf(room);
            pour = List.copyOf(pour);
        }
    }

    private final Setup setup;
    private final Map<StepId, Instant> opened;
    private final SortedMap<SeatNumber, Seat> seats;
    private final SortedMap<SeatNumber, Seat> takenAway;
    private final Map<ActivityId, ActivityRun> activities;
    private final Told told;
    private final Optional<Instant> closedAt;
    private final ClassReach reach;
    private final List<Recorded> log;
    private final List<Recorded> history;
    private final List<Recorded> corrected;
    private final Set<Long> undone;
    private final List<Duration> shifts;
    private final int furthestOpened;
    private final Progress progress;
    /** What made it, for the first who goes on from here; whoever else does adds the log up anew. */
    private Optional<Fold> made;

    LiveClass(Setup setup, Map<StepId, Instant> opened, SortedMap<SeatNumber, Seat> seats,
              SortedMap<SeatNumber, Seat> takenAway, Map<ActivityId, ActivityRun> activities, Told told,
              Optional<Instant> closedAt, ClassReach reach, List<Recorded> log, List<Recorded> history,
              List<Recorded> corrected, Set<Long> undone, Fold made) {
        this.setup = setup;
        this.opened = Collections.unmodifiableMap(new LinkedHashMap<>(opened));
        this.seats = Collections.unmodifiableSortedMap(new TreeMap<>(seats));
        this.takenAway = Collections.unmodifiableSortedMap(new TreeMap<>(takenAway));
        this.activities = Map.copyOf(activities);
        this.told = told;
        this.closedAt = closedAt;
        this.reach = reach;
        this.log = List.copyOf(log);
        this.history = log.equals(history) ? this.log : List.copyOf(history);
        this.corrected = history.equals(corrected) ? this.history : List.copyOf(corrected);
        this.undone = Set.copyOf(undone);
        this.made = Optional.of(made).filter(fold -> closedAt.isEmpty());
        this.shifts = shifts(log);
        this.furthestOpened = opened.keySet().stream().mapToInt(plan()::indexOf).max().orElse(-1);
        this.progress = new Progress(this); // last, as it looks at all the rest
    }

    /**
     * Adds a log up from its first event.
     *
     * @param log numbered from 1 without gaps; the first is the creation
     */
    public static LiveClass of(List<Recorded> log) {
        return Fold.of(log);
    }

    /** The class after one more event. */
    public LiveClass apply(Recorded next) {
        if (next.seq() != seq() + 1) {
            throw new IllegalArgumentException("event " + next.seq() + " cannot follow event " + seq());
        }
        return takeMade().map(fold -> fold.goOn(this, next)).orElseGet(() -> Fold.of(Corrections.with(log, next)));
    }

    private synchronized Optional<Fold> takeMade() {
        Optional<Fold> taken = made;
        made = Optional.empty();
        return taken;
    }

    /** How it was set up last; who sits there now is in {@link #seats()}. */
    public Setup setup() {
        return setup;
    }

    public Plan plan() {
        return setup.plan();
    }

    public String name() {
        return setup.name();
    }

    public Instant startsAt() {
        return setup.startsAt();
    }

    /** When guests were told that they can go home. */
    public Instant promisedEnd() {
        return setup.promisedEnd().orElseGet(() -> startsAt().plus(plan().promised()));
    }

    public Instant createdAt() {
        return history.get(0).at();
    }

    /** The first instant a tap of this class may bear. */
    Instant earliest() {
        return startsAt().isBefore(createdAt()) ? startsAt() : createdAt();
    }

    /** The number of the last event. */
    public long seq() {
        return history.get(history.size() - 1).seq();
    }

    /**
     * Whether nobody closed it and nothing was heard of it for twelve hours: longer than any step may take, so that a
     * class that only waits is never taken for one. A class that is set up early is heard of again when it begins.
     */
    public boolean isLeftOpen(Instant now) {
        Instant told = lastRecordedAt();
        Instant heard = startsAt().isAfter(told) && !startsAt().isAfter(now) ? startsAt() : told;
        return closedAt().isEmpty() && !heard.plus(LEFT_OPEN_AFTER).isAfter(now);
    }

    /** How far a class is looked at: to now, or to its end, which may have come long before it was closed. */
    public Instant end(Instant now) {
        Instant told = closedAt().orElse(now);
        Instant gone = history.stream()
                .filter(r -> r.event() instanceof ClassEvent.AtSeat || r.event() instanceof ClassEvent.StepOpened)
                .map(Recorded::at).max(Comparator.naturalOrder()).orElse(startsAt()).plus(GONE_AFTER);
        Instant last = gone.isBefore(startsAt()) ? startsAt() : gone;
        return told.isBefore(last) ? told : last;
    }

    /** Whether it had begun and was closed before everybody had gone home; not one that was left open till then. */
    public boolean closedAmongGuests() {
        return begun() && closedAt().filter(at -> at.equals(end(at))).isPresent();
    }

    /** When the last event was written down; the class's time never falls behind it. */
    public Instant lastRecordedAt() {
        return history.get(history.size() - 1).recordedAt();
    }

    /** The log as it was written, in order. Where a clock was set right, older times are those of the wrong one. */
    public List<Recorded> log() {
        return log;
    }

    /**
     * The same with all times by the clock as it was set right last; added up it is this class again. What happened in
     * the class is read from here.
     */
    public List<Recorded> history() {
        return history;
    }

    /**
     * How often the class's clock was set right.
     *
     * @see #setRightSince
     */
    public int clocks() {
        return shifts.size();
    }

    /** How far the clock was set right since it had been so that many times. */
    public Duration setRightSince(int clocks) {
        return shifts.stream().skip(clocks).reduce(Duration.ZERO, Duration::plus);
    }

    private static List<Duration> shifts(List<Recorded> log) {
        List<Duration> shifts = new ArrayList<>();
        for (Recorded recorded : log) { // a loop, as it is gone through with every tap
            if (recorded.event() instanceof ClassEvent.ClockShifted shifted) {
                shifts.add(shifted.by());
            }
        }
        return List.copyOf(shifts);
    }

    /**
     * The history as its own corrections left it: the same events under the same numbers, undone ones too, but each tap
     * with the time and the seat that it was set right to. For showing a seat what was tapped for it.
     */
    public List<Recorded> corrected() {
        return corrected;
    }

    Set<Long> undone() {
        return undone;
    }

    public boolean isUndone(long seq) {
        return undone.contains(seq);
    }

    /** The event that this command became, if it did. The creation was no command. */
    public OptionalLong seqOf(String commandId) {
        for (int i = log.size() - 1; i > 0; i--) {
            if (log.get(i).commandId().equals(commandId)) {
                return OptionalLong.of(log.get(i).seq());
            }
        }
        return OptionalLong.empty();
    }

    /** The event of that number, by the clock set right last; none if there is no such number yet. */
    public Optional<Recorded> recorded(long seq) {
        return seq < 1 || seq > history.size() ? Optional.empty() : Optional.of(history.get((int) seq - 1));
    }

    /** What the command of that id wished for, if there was one; when it says it was tapped is no part of it. */
    public Optional<ClassEvent> wishOf(String commandId) {
        OptionalLong seq = seqOf(commandId);
        return seq.isPresent() ? Optional.of(log.get((int) seq.getAsLong() - 1).event()) : Optional.empty();
    }

    public Optional<Instant> openedAt(StepId step) {
        return Optional.ofNullable(opened.get(step));
    }

    public Collection<Seat> seats() {
        return seats.values();
    }

    public Optional<Seat> seat(SeatNumber number) {
        return Optional.ofNullable(seats.get(number));
    }

    /** A place that was taken away tonight, as it was then. */
    public Optional<Seat> takenAway(SeatNumber number) {
        return Optional.ofNullable(takenAway.get(number));
    }

    /** How many places the drawing of the table has: the highest number, also of a place that was taken away. */
    public int places() {
        return Stream.concat(seats.keySet().stream(), takenAway.keySet().stream()).mapToInt(SeatNumber::value).max()
                .orElseThrow();
    }

    /**
     * How many seats make each of the plan's candles, in the plan's order: those that make one of their own and have
     * not left, whether they are here yet or not. Empty if the plan has no candles to choose from.
     */
    public Map<String, Integer> candlesToMake() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        plan().candles().forEach(candle -> counts.put(candle.id(), 0));
        if (!counts.isEmpty()) {
            String first = plan().candles().get(0).id();
            making().forEach(s ->
                    counts.merge(s.candle().filter(counts::containsKey).orElse(first), 1, Integer::sum));
        }
        return Collections.unmodifiableMap(counts);
    }

    /** How many seats make a candle of their own and have not left, whether they are here yet or not. */
    public int makers() {
        return (int) making().count();
    }

    private Stream<Seat> making() {
        return seats().stream().filter(s -> !s.hasLeft() && s.sharesWith().isEmpty());
    }

    public ActivityRun activity(ActivityId id) {
        return activities.getOrDefault(id, ActivityRun.UNTOUCHED);
    }

    /** The room's temperature as it was read tonight, in order. */
    public List<Temperature> roomReadings() {
        return told.room;
    }

    /** The wax's temperature in the pitcher as it was read tonight, in order. */
    public List<Temperature> pourReadings() {
        return told.pour;
    }

    public List<Seat.Note> notes() {
        return told.notes;
    }

    /** Whether guests may say with their own phones that they are done. */
    public boolean guestsMayTell() {
        return told.guestsMayTell;
    }

    public Optional<Instant> closedAt() {
        return closedAt;
    }

    /** Position of the furthest led step that is open; -1 before the first. */
    public int furthestOpened() {
        return furthestOpened;
    }

    /** Whether anything was done in it: a step was opened, or finished by somebody. */
    public boolean begun() {
        return furthestOpened() >= 0 || seats().stream().anyMatch(s -> !s.finishes().isEmpty());
    }

    /** Whether anything of its plan was ever told, taken back or not: its history is read by the plan's names. */
    boolean wasBegun() {
        return log.stream().map(Recorded::event).anyMatch(event -> event instanceof ClassEvent.StepOpened
                || event instanceof ClassEvent.StepFinished);
    }

    /** How far the class as a whole has come, the clock left aside. */
    public ClassReach reach() {
        return reach;
    }

    /** The led step that the instructor opens next. */
    public Optional<Step> nextLed() {
        return plan().steps().stream().skip(furthestOpened() + 1L).filter(Step::led).findFirst();
    }

    /** Where every seat stands. */
    public Progress progress() {
        return progress;
    }
}
