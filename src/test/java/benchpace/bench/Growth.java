package benchpace.bench;

import benchpace.bench.growth.Curve;
import benchpace.bench.growth.GrowthChart;
import benchpace.bench.growth.GrowthChart.Panel;
import benchpace.bench.growth.PastClasses;
import benchpace.bench.tap.BoardSide;
import benchpace.bench.tap.Flags;
import benchpace.bench.tap.Machine;
import benchpace.bench.tap.Scratch;
import benchpace.bench.tap.ScreenKind;
import benchpace.bench.tap.Side;
import benchpace.bench.tap.TapTimes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a tap and the opening of a class cost, by how much there is: {@code mvn -q -P bench verify -Dbench=Growth}.
 * Seats, screens, classes open at once, events in the class, past classes; for each the points, the power that the
 * upper half of them grows with beside that of n log n over the same points, and how much the last is over the first
 * beside n log n. The drawing is {@code target/growth.svg}. {@code -Dshort} leaves the largest out and taps less; of
 * {@code -Dof=seats,screens,open,events,past} only what it names is measured. It prints, and asserts nothing.
 */
final class Growth {
    private static final Path DRAWING = Path.of("target/growth.svg");
    private static final List<String> COSTS = List.of("tap at once", "tap complete", "tap, processor",
            "opening the class");
    private static final int WARM_UP = 5;
    private static final int TAPS = 25;
    private static final int OPENINGS = 15;
    private static final int REST_MILLIS = 120;
    private static final int USUAL_SEATS = 8;
    private static final int RESTARTS = 3;
    private static final int OLD_CLASSES = 30;

    private final int taps = Asked.isShort() ? 10 : TAPS;
    private final List<Panel> panels = new ArrayList<>();

    /** Brings the board to so many of something, its class begun and watched. */
    private interface Growing {
        void to(BoardSide board, int n) throws IOException, InterruptedException;
    }

    private Growth() {
    }

    static void measure() throws IOException, InterruptedException {
        Growth growth = new Growth();
        String head = Machine.head("What grows with what, in ms: a tap until its last screen, at once and complete; "
                + "the processor's time a tap; a page", Flags.USUAL);
        System.out.println(head);
        if (Asked.isAmong("of", "seats")) {
            growth.against("seats", List.of(6, 12, 20, 30, 45, 60), growth::seats);
        }
        if (Asked.isAmong("of", "screens")) {
            growth.against("screens", List.of(1, 5, 15, 40, 80, 150), growth::screens);
        }
        if (Asked.isAmong("of", "open")) {
            growth.against("classes open at once", List.of(1, 2, 5, 10, 20, 30), growth::open);
        }
        if (Asked.isAmong("of", "events")) {
            growth.against("events in the class", shortened(List.of(50, 150, 500, 1000, 2000, 5000)), growth::events);
        }
        if (Asked.isAmong("of", "past")) {
            growth.past(shortened(List.of(10, 30, 100, 500, 2000, 5000)));
        }
        Files.writeString(DRAWING, GrowthChart.of(head, growth.panels));
        System.out.println("Drawn: " + DRAWING);
    }

    private static List<Integer> shortened(List<Integer> counts) {
        return Asked.isShort() ? counts.subList(0, counts.size() - 2) : counts;
    }

    private static Path folder() throws IOException {
        return Scratch.folder();
    }

    private void against(String what, List<Integer> counts, Growing growing) throws IOException, InterruptedException {
        Curve.Collecting points = new Curve.Collecting(COSTS);
        try (BoardSide board = new BoardSide(List.of(), Flags.USUAL, folder())) {
            warm(board);
            for (int n : counts) {
                growing.to(board, n);
                points.add(n, costs(board));
            }
        }
        print(what, counts, points.curves());
    }

    private void print(String what, List<Integer> counts, List<Curve> curves) {
        System.out.println(Curve.heading(what, counts));
        curves.forEach(curve -> System.out.println(curve.row()));
        System.out.println();
        panels.add(new Panel(what, curves));
    }

    private void warm(BoardSide board) throws IOException, InterruptedException {
        board.begin(USUAL_SEATS, 1);
        board.watchedBy(ScreenKind.mix(3));
        board.hurry(100);
        costs(board);
    }

    private double[] costs(BoardSide board) throws IOException, InterruptedException {
        TapTimes times = new TapTimes();
        tap(board, WARM_UP, new TapTimes());
        long busy = board.footprint().busyMillis();
        tap(board, taps, times);
        double processor = (board.footprint().busyMillis() - busy) / (double) taps;
        return new double[] {times.millis(TapTimes.Kind.LAST, 50), times.millis(TapTimes.Kind.WHOLE_LAST, 50),
                processor, board.opening(OPENINGS)};
    }

    private static void tap(BoardSide board, int taps, TapTimes times) throws IOException, InterruptedException {
        for (int n = 0; n < taps; n++) {
            board.tap(times);
            Side.rest(REST_MILLIS);
        }
    }

    private void seats(BoardSide board, int seats) throws IOException, InterruptedException {
        board.begin(seats, seats);
        board.watchedBy(ScreenKind.mix(3));
    }

    private void screens(BoardSide board, int screens) throws IOException, InterruptedException {
        board.begin(USUAL_SEATS, screens);
        board.watchedBy(ScreenKind.mix(screens));
    }

    private void open(BoardSide board, int classes) throws IOException, InterruptedException {
        while (board.open() < classes) {
            board.leaveOpen();
            board.begin(USUAL_SEATS, board.open());
        }
        board.watchedBy(ScreenKind.mix(3));
    }

    private void events(BoardSide board, int events) throws IOException, InterruptedException {
        if (board.seq() > events) {
            board.begin(USUAL_SEATS, 5);
            board.watchedBy(ScreenKind.mix(3));
        }
        board.hurry((int) Math.max(0, events - board.seq()));
    }

    private void past(List<Integer> counts) throws IOException, InterruptedException {
        List<String> costs = new ArrayList<>(COSTS);
        costs.set(0, "start to ready"); // at once is the same as anywhere else
        Curve.Collecting points = new Curve.Collecting(costs);
        Path data = folder();
        PastClasses past = new PastClasses(data);
        past.first();
        for (int n : counts) {
            past.upTo(n);
            if (n == OLD_CLASSES) {
                restarts(data);
            }
            try (BoardSide board = new BoardSide(List.of(), Flags.USUAL, data)) {
                warm(board);
                double[] cost = costs(board);
                cost[0] = board.untilReady().toMillis();
                points.add(n, cost);
            }
        }
        print("past classes", counts, points.curves());
    }

    /** By the launcher; the first time leaves what the others start from. */
    private static void restarts(Path data) throws IOException, InterruptedException {
        Path installed = folder();
        for (int n = 0; n <= RESTARTS; n++) {
            try (BoardSide board = BoardSide.launched(List.of(), installed, data)) {
                double ready = board.untilReady().toNanos() / 1e6;
                double page = board.opening(PastClasses.id(n), 1);
                System.out.printf(Locale.ROOT, "%d old classes, %s start: ready after %.0f ms, the first page of one "
                        + "%.0f ms later, together %.0f ms, to reach 1000%n", OLD_CLASSES, n == 0 ? "first" : "next",
                        ready, page, ready + page);
            }
        }
    }
}
