package benchpace.board.waiting;

import benchpace.board.cooling.ReadyWindow;
import benchpace.breaks.Assignment;
import benchpace.breaks.BrokenAnnouncement;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitEvent;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The plan of the wait as screens show it.
 *
 * @param plannedAt  for which instant it was planned; empty before the first pour and after the class
 * @param activities the plan's activities with how they stand
 * @param strips     one a seat that waits or will, in order of seats
 * @param calls      what to call out and count down to, what has just begun first, then in order of time
 * @param changes    what guests were told and does not hold any more, the newest first
 * @param leisure    the seats with nothing to do for a while
 * @param idle       minutes with nothing to do, by plan, and had it gone first come, first served
 * @param unplaced   class breaks that find no time, while anybody waits
 * @param late       the seats wrapped more than {@link #LATE} after the promised end
 */
public record WaitView(Optional<Instant> plannedAt, List<ActivityView> activities, List<StripView> strips,
                       List<CallView> calls, List<ChangeView> changes, List<OfferView> leisure, Idle idle,
                       List<Unplaced> unplaced, List<SeatNumber> late) {
    /** How far past the promised end a candle counts as late: what guests forgive; common practice, no source. */
    public static final Duration LATE = Duration.ofMinutes(10);

    /** No activities and no plan. */
    public static final WaitView NONE = unplanned(List.of());

    /**
     * One activity tonight.
     *
     * @param openedAt     when the instructor started it, if it is open
     * @param extraMinutes how much longer it takes than planned
     * @param seats        who takes part, by number, as far as it was tapped
     * @param now          who is at it now, by plan or tap
     * @param nowUntil     when the last of them is done, typically
     * @param next         the next seats to be sent to it, and when
     * @param afterTest    whether seats come to it that cannot be sent yet, as the hand test comes first
     * @param expected     about when it begins for those; empty once it hangs on the hand test alone
     */
    public record ActivityView(String id, String name, ActivityKind kind, boolean wholeClass, String where, String cue,
                               String caution, int places, boolean open, boolean skipped, Optional<Instant> openedAt,
                               int extraMinutes, List<Integer> seats, List<Integer> now, Optional<Instant> nowUntil,
                               Optional<Wave> next, boolean afterTest, Optional<Instant> expected) {
        public ActivityView {
            seats = List.copyOf(seats);
            now = List.copyOf(now);
        }

        /** As it was tapped, with when it begins as it was planned. @param was the same with a plan */
        ActivityView planned(ActivityView was) {
            return new ActivityView(id, name, kind, wholeClass, where, cue, caution, places, open, skipped, openedAt,
                    extraMinutes, seats, skipped ? List.of() : was.now, was.nowUntil.filter(until -> !skipped),
                    was.next.filter(wave -> !skipped), was.afterTest, was.expected);
        }
    }

    /** Seats that begin an activity together. */
    public record Wave(Instant at, List<Integer> seats) {
        public Wave {
            seats = List.copyOf(seats);
        }
    }

    /**
     * One seat's wait.
     *
     * @param freeFrom      when its hands are, or are expected to be, free after the pour
     * @param ready         when its candle is expected to be ready
     * @param until         when its wait ends
     * @param idle          minutes with nothing to do still to come
     * @param idleSoFar     such minutes since its pour
     * @param idleUnplanned such minutes of the whole wait, if from now on it went first come, first served
     */
    public record StripView(int seat, List<PartView> parts, Instant freeFrom, ReadyWindow ready, boolean poured,
                            Instant until, int idle, int idleSoFar, int idleUnplanned) {
        public StripView {
            parts = List.copyOf(parts);
        }

        /** Minutes with nothing to do, of the whole wait. */
        public int wholeIdle() {
            return idle + idleSoFar;
        }

        /** What it is at, if it is at anything. */
        public Optional<PartView> now() {
            return parts.stream().filter(p -> p.status() == Assignment.Status.UNDER_WAY).findFirst();
        }
    }

    public record PartView(String activity, String name, ActivityKind kind, Instant from, Instant until,
                           Assignment.Status status) { }

    /** Whether something lies ahead or has just begun. */
    public enum CallState { AHEAD, BEGUN }

    /**
     * Something to call out.
     *
     * @param event  what the plan says of it
     * @param told   near enough that guests are told which seats it is for; from then on it moves only if it must
     */
    public record CallView(CallState state, WaitEvent event, boolean told) {
        public Instant at() {
            return event.at();
        }

        /** The same, what is called of the first candles as {@link WaitView#firstReady} has it. */
        private Optional<CallView> firstReady(Optional<Instant> from) {
            return event instanceof WaitEvent.FirstReady e
                    ? from.map(at -> new CallView(state, new WaitEvent.FirstReady(at, e.earliest(), e.latest(),
                            e.seats()), told))
                    : Optional.of(this);
        }

        /** For whom, by number, ascending. */
        public List<Integer> seats() {
            return event.seats().stream().map(SeatNumber::value).toList();
        }
    }

    /**
     * What one cause changed at one instant of what guests were told.
     *
     * @param other the name of the activity that is in the way, where the reason is one
     * @param own   the activity that something was done to, where that is the reason
     * @param told  what was told and does not hold
     */
    public record ChangeView(Instant at, BrokenAnnouncement.Reason why, Optional<String> other,
                             Optional<ActivityView> own, List<Told> told) {
        public ChangeView {
            told = List.copyOf(told);
        }
    }

    /** Told for a time to these seats. @param now when it is instead; empty when it is off */
    public record Told(String activity, Instant was, Optional<Instant> now, List<SeatNumber> seats) {
        public Told {
            seats = List.copyOf(seats);
        }
    }

    /** A seat with nothing to do until an instant, and the names of what fits, the best first. */
    public record OfferView(int seat, Instant until, List<String> offers) {
        public OfferView {
            offers = List.copyOf(offers);
        }
    }

    /**
     * Minutes with nothing to do in the whole wait, of all seats and of the one that has most: with the plan, and if
     * from now on it went first come, first served. Both hold the same minutes so far.
     */
    public record Idle(int planned, int unplanned, int mostPlanned, int mostUnplanned, int soFar) {
        static final Idle NONE = new Idle(0, 0, 0, 0, 0);
    }

    public WaitView {
        activities = List.copyOf(activities);
        strips = List.copyOf(strips);
        calls = List.copyOf(calls);
        changes = List.copyOf(changes);
        leisure = List.copyOf(leisure);
        unplaced = List.copyOf(unplaced);
        late = List.copyOf(late);
    }

    static WaitView unplanned(List<ActivityView> activities) {
        return new WaitView(Optional.empty(), activities, List.of(), List.of(), List.of(), List.of(), Idle.NONE,
                List.of(), List.of());
    }

    /**
     * The same, with the first candles called as every screen says of them.
     *
     * @param from when the first one can be tried; empty once that has begun, as then the candles say so
     */
    public WaitView firstReady(Optional<Instant> from) {
        List<CallView> said = calls.stream().flatMap(c -> c.firstReady(from).stream()).toList();
        Stream<CallView> begun = said.stream().filter(c -> c.state() == CallState.BEGUN);
        Stream<CallView> ahead = said.stream().filter(c -> c.state() == CallState.AHEAD)
                .sorted(Comparator.comparing(CallView::at));
        return new WaitView(plannedAt, activities, strips, Stream.concat(begun, ahead).toList(), changes, leisure, idle,
                unplaced, late);
    }

    /** The same with nothing left to call out, of changes or to seats at leisure; those that wait still do. */
    public WaitView uncalled() {
        return new WaitView(plannedAt, activities, strips, List.of(), List.of(), List.of(), idle, unplaced, late);
    }

    public Optional<StripView> strip(int seat) {
        return strips.stream().filter(s -> s.seat() == seat).findFirst();
    }

    public Optional<OfferView> leisure(int seat) {
        return leisure.stream().filter(o -> o.seat() == seat).findFirst();
    }
}
