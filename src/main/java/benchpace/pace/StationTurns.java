package benchpace.pace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Who has had a turn at a step's stations, who has it and who waits, as far as ticks tell. In which order seats were
 * served is not recorded, so it is believed to be the fair one, and a tick that contradicts it corrects it:
 *
 * <ol>
 * <li>First come, first served: in the order in which the seats came to the step, then in that of the table. A seat
 * that is away for a moment lets others go first and is the next when it is back.</li>
 * <li>A seat keeps its station for as long as planned, or until it is ticked if that is sooner. One that is not ticked
 * although the whole step should be over keeps it for as long as its step is overdue: nobody behind it can be blamed
 * for that time. Where the station is kept for the whole step it falls free with the tick alone.</li>
 * <li>A seat that is ticked before its turn has gone first. It takes the place of the seat whose turn was believed to
 * be the last that began, and that seat waits again, as the next.</li>
 * </ol>
 *
 * So no seat's time begins while as many seats as there are stations may still be served before it; a seat that keeps
 * a station has its own time counted from its turn on, as if nobody waited. What is lost: which of several seats that
 * came together holds a station nobody leaves; the first of them is asked about. A function of the record alone.
 */
public final class StationTurns {
    /** Ticks this close are one sweep over the tablet, whose seats share the time before it. */
    private static final double SAME_SWEEP_MINUTES = 1.5 / 60;
    private static final int NOBODY = -1;

    private final PaceStations stations;
    private final double restMinutes;
    private final double planMinutes;
    private final List<Guest> guests;
    private final double now;

    private final double[] end;
    private final boolean[] assigned;
    private final int[] before;
    private final double[] floor;
    private final List<Integer> queue = new ArrayList<>();
    private final int[] holder;
    private final double[] freed;

    /**
     * A seat that has come to the step.
     *
     * @param seat its number
     * @param cameMinutes when it could have begun, had a station been free
     * @param doneMinutes when it was ticked; {@link SeatTrack#NOT_YET} if it was not
     * @param leftMinutes when it left for good
     * @param pauses when it was away for a moment
     */
    public record Guest(int seat, double cameMinutes, double doneMinutes, double leftMinutes, List<Span> pauses) {
        public Guest {
            pauses = List.copyOf(pauses);
        }
    }

    private enum Kind { GONE, AWAY, BACK, CAME }

    private record Moment(double at, Kind kind, int guest) { }

    private StationTurns(PaceStations stations, double planMinutes, List<Guest> guests, double now) {
        this.stations = stations;
        this.planMinutes = planMinutes;
        this.restMinutes = Math.max(0, planMinutes - stations.eachMinutes());
        this.guests = guests;
        this.now = now;
        int n = guests.size();
        this.end = guests.stream().mapToDouble(g -> Math.min(g.doneMinutes(), g.leftMinutes())).toArray();
        this.assigned = new boolean[n];
        this.before = new int[n];
        this.floor = new double[n];
        this.holder = new int[stations.atOnce()];
        this.freed = new double[stations.atOnce()];
        Arrays.fill(before, NOBODY);
        Arrays.fill(floor, Double.NEGATIVE_INFINITY);
        Arrays.fill(holder, NOBODY);
        Arrays.fill(freed, Double.NEGATIVE_INFINITY);
    }

    /**
     * @param planMinutes what the plan gives the whole step
     * @param guests who has come to the step, in the table's order, with nothing recorded later than {@code now}
     */
    public static StationTurns of(PaceStations stations, double planMinutes, List<Guest> guests, double now) {
        StationTurns turns = new StationTurns(stations, planMinutes, List.copyOf(guests), now);
        turns.replay();
        return turns;
    }

    /** Of every step up to the pour that has stations, by its index. */
    public static Map<Integer, StationTurns> atSteps(ClassTrack track, double now) {
        return StationWaits.of(track, now).turns();
    }

    /** When the turn of each guest began, in their order; {@link SeatTrack#NOT_YET} of those that wait for it. */
    public double[] turns() {
        double[] turns = new double[guests.size()];
        for (int i = 0; i < turns.length; i++) {
            turns[i] = assigned[i] ? turn(i, now) : SeatTrack.NOT_YET;
        }
        shareSweeps(turns);
        for (int i = 0; i < turns.length; i++) {
            if (assigned[i] && end[i] < SeatTrack.NOT_YET) {
                // done in less than half the time: the tick of the one before came late, not the turn
                turns[i] = Math.max(guests.get(i).cameMinutes(), Math.min(turns[i], end[i] - 0.5 * planMinutes));
            }
        }
        return turns;
    }

    /** Since when the seats that are not through with the step have had their turn, by number. */
    public Map<Integer, Double> began() {
        Map<Integer, Double> began = new TreeMap<>();
        for (int i = 0; i < end.length; i++) {
            if (assigned[i] && end[i] == SeatTrack.NOT_YET) {
                began.put(guests.get(i).seat(), turn(i, now));
            }
        }
        return began;
    }

    /** The numbers of the seats believed to be at a station, in the order of their turns. */
    public List<Integer> served() {
        return Arrays.stream(holder).filter(h -> h != NOBODY && end[h] == SeatTrack.NOT_YET && release(h, now) >= now)
                .boxed().sorted(Comparator.comparing((Integer h) -> turn(h, now)).thenComparing(h -> h))
                .map(h -> guests.get(h).seat()).toList();
    }

    /** The numbers of the seats that wait for their turn, the next one first; those away for a moment left out. */
    public List<Integer> waiting() {
        return queue.stream().filter(i -> !isAway(i, now)).map(i -> guests.get(i).seat()).toList();
    }

    /** When all that wait now have had their turn, if each keeps its station as long as planned. */
    public double throughMinutes() {
        double[] free = new double[holder.length];
        for (int s = 0; s < free.length; s++) {
            free[s] = Math.max(now, holder[s] == NOBODY ? freed[s] : release(holder[s], now));
        }
        int waiting = waiting().size();
        double last = Arrays.stream(free).max().orElse(now);
        for (int i = 0; i < waiting; i++) {
            Arrays.sort(free);
            free[0] += stations.eachMinutes();
            last = Math.max(last, free[0]);
        }
        return last;
    }

    // ---- what happened, moment by moment

    private void replay() {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < guests.size(); i++) {
            Guest guest = guests.get(i);
            moments.add(new Moment(guest.cameMinutes(), Kind.CAME, i));
            if (end[i] < SeatTrack.NOT_YET) {
                moments.add(new Moment(end[i], Kind.GONE, i));
            }
            for (Span pause : guest.pauses()) {
                moments.add(new Moment(pause.fromMinutes(), Kind.AWAY, i));
                if (pause.toMinutes() < SeatTrack.NOT_YET) {
                    moments.add(new Moment(pause.toMinutes(), Kind.BACK, i));
                }
            }
        }
        moments.sort(Comparator.comparingDouble(Moment::at).thenComparing(Moment::kind)
                .thenComparing(m -> guests.get(m.guest()).cameMinutes()).thenComparing(Moment::guest));
        for (Moment moment : moments) {
            settle(moment.at());
            switch (moment.kind()) {
                case CAME -> came(moment.guest());
                case GONE -> gone(moment.guest(), moment.at());
                case AWAY -> away(moment.guest(), moment.at());
                case BACK -> { } // a place may be taken now
            }
            settle(moment.at());
        }
        settle(now);
    }

    private void came(int i) {
        if (!assigned[i]) {
            queue.add(i);
        }
    }

    private void gone(int i, double at) {
        boolean waited = queue.remove((Integer) i);
        boolean ticked = guests.get(i).doneMinutes() <= at;
        if (assigned[i] || waited && !ticked) {
            return;
        }
        int station = waited ? lastTaken(at) : NOBODY;
        if (station != NOBODY) {
            goFirst(i, station);
        }
        assigned[i] = true;
    }

    /** Seat i was served although it was not its turn: where the seat was not yet whose turn was the last to begin. */
    private void goFirst(int i, int station) {
        int other = holder[station];
        before[i] = before[other];
        floor[i] = floor[other];
        holder[station] = i;
        sendBack(other);
    }

    private void sendBack(int i) {
        assigned[i] = false;
        before[i] = NOBODY;
        floor[i] = Double.NEGATIVE_INFINITY;
        queue.add(0, i);
    }

    /** The station whose seat is not through and had the last turn. */
    private int lastTaken(double at) {
        int last = NOBODY;
        for (int s = 0; s < holder.length; s++) {
            boolean held = holder[s] != NOBODY && end[holder[s]] > at;
            last = held && (last == NOBODY || turn(holder[s], at) >= turn(holder[last], at)) ? s : last;
        }
        return last;
    }

    private void away(int i, double at) {
        for (int s = 0; s < holder.length; s++) {
            if (holder[s] == i && end[i] > at && release(i, at) >= at) {
                holder[s] = NOBODY;
                freed[s] = at;
                sendBack(i);
            }
        }
    }

    /** Whoever can begin by {@code at} begins. */
    private void settle(double at) {
        for (int next = firstHere(at); next != NOBODY; next = firstHere(at)) {
            int station = firstFree(at);
            if (station == NOBODY) {
                return;
            }
            queue.remove((Integer) next);
            assigned[next] = true;
            before[next] = holder[station];
            floor[next] = freed[station];
            holder[station] = next;
        }
    }

    private int firstHere(double at) {
        return queue.stream().filter(i -> !isAway(i, at)).findFirst().orElse(NOBODY);
    }

    private boolean isAway(int i, double at) {
        return guests.get(i).pauses().stream().anyMatch(p -> p.covers(at));
    }

    private int firstFree(double at) {
        int first = NOBODY;
        double earliest = Double.POSITIVE_INFINITY;
        for (int s = 0; s < holder.length; s++) {
            int h = holder[s];
            double release = h == NOBODY ? freed[s] : release(h, at);
            if ((h == NOBODY || end[h] <= at || release < at) && release < earliest) {
                first = s;
                earliest = release;
            }
        }
        return first;
    }

    // ---- times, as they stand at a moment

    private double turn(int i, double at) {
        double came = Math.max(guests.get(i).cameMinutes(), floor[i]);
        return before[i] == NOBODY ? came : Math.max(came, release(before[i], Math.min(at, end[i])));
    }

    /** When guest i leaves its station. */
    private double release(int i, double at) {
        double seen = Math.min(at, end[i]);
        return Math.min(end[i], Math.max(turn(i, seen) + stations.eachMinutes(), seen - restMinutes));
    }

    /** Seats served one after the other and ticked in one go: how long each took is not told, so they share it. */
    private void shareSweeps(double[] turns) {
        int[] after = new int[turns.length];
        Arrays.fill(after, NOBODY);
        for (int i = 0; i < turns.length; i++) {
            if (assigned[i] && sameSweep(i)) {
                after[before[i]] = i;
            }
        }
        for (int i = 0; i < turns.length; i++) {
            if (after[i] == NOBODY || sameSweep(i)) {
                continue;
            }
            List<Integer> swept = new ArrayList<>();
            for (int j = i; j != NOBODY; j = after[j]) {
                swept.add(j);
            }
            int last = swept.get(swept.size() - 1);
            double share = Math.max(0, end[last] - turns[i] - restMinutes) / swept.size() + restMinutes;
            for (int j : swept) {
                turns[j] = Math.max(guests.get(j).cameMinutes(), end[j] - share);
            }
        }
    }

    private boolean sameSweep(int i) {
        return before[i] != NOBODY && end[i] < SeatTrack.NOT_YET
                && end[i] - end[before[i]] <= SAME_SWEEP_MINUTES && end[before[i]] < SeatTrack.NOT_YET;
    }
}
