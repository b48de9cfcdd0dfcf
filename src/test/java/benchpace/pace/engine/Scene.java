package benchpace.pace.engine;

import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.Mark;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.PaceView;
import benchpace.pace.SeatPace;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.Tap;
import benchpace.pace.UntickedSeat;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.forecast.Forecast;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A small class told event by event, for tests: vessel 2, wicks 4, mix 5, pour 3 minutes, cure 60. */
public final class Scene {
    static final List<String> IDS = List.of("vessel", "wicks", "mix", "pour");

    private final List<PaceStep> steps = new ArrayList<>();
    private final List<Double> opened = new ArrayList<>();
    private final Map<Integer, SeatTrack> seats = new TreeMap<>();
    private final PaceEngine engine;

    private Scene(int n, boolean led, PacePriors priors) {
        double[] plan = {2, 4, 5, 3};
        for (int k = 0; k < plan.length; k++) {
            boolean opens = led && k > 0;
            steps.add(new PaceStep(IDS.get(k), plan[k], opens, k == 3 ? WorkKind.POUR : WorkKind.HANDS_ON));
            opened.add(opens ? SeatTrack.NOT_YET : 0.0);
        }
        for (int seat = 1; seat <= n; seat++) {
            seats.put(seat, SeatTrack.present(seat));
        }
        engine = new PaceEngine(priors);
    }

    public static Scene free(int seats) {
        return new Scene(seats, false, PacePriors.standard());
    }

    public static Scene led(int seats) {
        return new Scene(seats, true, PacePriors.standard());
    }

    /** So many seats can do the step at once, each keeping its station for so long. */
    public Scene served(String step, int atOnce, double minutesEach) {
        int k = IDS.indexOf(step);
        PaceStep all = steps.get(k);
        steps.set(k, new PaceStep(all.id(), all.planMinutes(), all.led(), all.kind(),
                Optional.of(new PaceStations(atOnce, minutesEach))));
        return this;
    }

    public Scene open(double at, String step) {
        opened.set(IDS.indexOf(step), at);
        return this;
    }

    public Scene tap(double at, int seat, String step) {
        SeatTrack s = seats.get(seat);
        List<Tap> taps = new ArrayList<>(s.taps());
        taps.add(new Tap(IDS.indexOf(step), at, false));
        taps.sort((a, b) -> Double.compare(a.atMinutes(), b.atMinutes()));
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), s.pauses(), taps, s.stillAtIt(), s.hints(),
                s.claims()));
    }

    /** Every seat but one taps the step, each a few seconds after the other, from {@code at} on. */
    public Scene othersTap(double at, int except, String step) {
        double when = at;
        for (int seat : List.copyOf(seats.keySet())) {
            if (seat != except) {
                tap(when, seat, step);
                when += 0.15;
            }
        }
        return this;
    }

    public Scene untap(int seat, String step) {
        SeatTrack s = seats.get(seat);
        int k = IDS.indexOf(step);
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), s.pauses(),
                s.taps().stream().filter(t -> t.step() != k).toList(), s.stillAtIt(), s.hints(), s.claims()));
    }

    public Scene arrive(double at, int seat) {
        SeatTrack s = seats.get(seat);
        return put(copy(s, at, s.leftMinutes(), s.pauses(), s.taps(), s.stillAtIt(), s.hints(), s.claims()));
    }

    public Scene leave(double at, int seat) {
        SeatTrack s = seats.get(seat);
        return put(copy(s, s.arrivedMinutes(), at, s.pauses(), s.taps(), s.stillAtIt(), s.hints(), s.claims()));
    }

    public Scene pause(double from, double to, int seat) {
        SeatTrack s = seats.get(seat);
        List<Span> pauses = new ArrayList<>(s.pauses());
        pauses.add(new Span(from, to));
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), pauses, s.taps(), s.stillAtIt(), s.hints(),
                s.claims()));
    }

    public Scene claim(double at, int seat) {
        SeatTrack s = seats.get(seat);
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), s.pauses(), s.taps(), s.stillAtIt(), s.hints(),
                List.of(new Span(at, SeatTrack.NOT_YET))));
    }

    /** The one claim of this seat ends with "sorted". */
    public Scene sorted(double at, int seat) {
        SeatTrack s = seats.get(seat);
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), s.pauses(), s.taps(), s.stillAtIt(), s.hints(),
                List.of(new Span(s.claims().get(0).fromMinutes(), at))));
    }

    public Scene stillAtIt(double at, int seat, String step) {
        SeatTrack s = seats.get(seat);
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), s.pauses(), s.taps(),
                List.of(new Mark(IDS.indexOf(step), at)), s.hints(), s.claims()));
    }

    public Scene saysDone(double at, int seat, String step) {
        SeatTrack s = seats.get(seat);
        return put(copy(s, s.arrivedMinutes(), s.leftMinutes(), s.pauses(), s.taps(), s.stillAtIt(),
                List.of(new Mark(IDS.indexOf(step), at)), s.claims()));
    }

    private Scene put(SeatTrack seat) {
        seats.put(seat.seat(), seat);
        return this;
    }

    private static SeatTrack copy(SeatTrack s, double arrived, double left, List<Span> pauses, List<Tap> taps,
                                  List<Mark> still, List<Mark> hints, List<Span> claims) {
        return new SeatTrack(s.seat(), s.party(), s.sharesCandle(), arrived, left, pauses, taps, still, hints, claims,
                s.setMinutes(), s.ready());
    }

    /** What was recorded until {@code now}. */
    public ClassTrack track(double now) {
        return new ClassTrack(steps, opened, 60, List.copyOf(seats.values())).asOf(now);
    }

    public PaceView view(double now) {
        ClassTrack track = track(now);
        return engine.judge(track, now, engine.remember(track, now, PaceMemory.EMPTY));
    }

    public List<UntickedSeat> beforeOpening(double now, String step) {
        return engine.beforeOpening(track(now), now, IDS.indexOf(step));
    }

    public SeatPace seat(double now, int seat) {
        return view(now).seats().stream().filter(s -> s.seat() == seat).findFirst().orElseThrow();
    }

    public Level level(double now, int seat) {
        return seat(now, seat).level();
    }

    public Forecast forecast(double now) {
        return engine.forecast(track(now), now);
    }

    /** Every level each seat shows until {@code end}, by half minute. */
    public Map<Integer, List<Level>> history(double end) {
        Map<Integer, List<Level>> history = new HashMap<>();
        PaceMemory memory = PaceMemory.EMPTY;
        for (double now = 0; now <= end; now += PaceEngine.TICK_MINUTES) {
            ClassTrack track = track(now);
            memory = engine.remember(track, now, memory);
            engine.levels(track, now, memory)
                    .forEach((seat, level) -> history.computeIfAbsent(seat, s -> new ArrayList<>()).add(level));
        }
        return history;
    }
}
