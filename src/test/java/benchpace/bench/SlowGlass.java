package benchpace.bench;

import benchpace.bench.glass.SlowedPage;
import benchpace.bench.glass.SlowedPage.Seen;
import benchpace.bench.glass.SlowedPage.Task;
import benchpace.bench.tap.Scratch;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A tap on the glass of a slow tablet: {@code mvn -q -P bench verify -Dbench=SlowGlass}. Two tablets show a class in
 * Chromium; one is tapped. For so many seats each: from the finger's lift until the tapped tile is drawn with its
 * answer, and until the other tablet has drawn it; and every task that kept a page busy for more than 50 ms, while it
 * was opened and while it was tapped; and, beside it, the tapped box of a page that does next to nothing. Options:
 * {@code -Dseats=8,24,40}, {@code -Dtaps=}{@value #TAPS}. It prints, and asserts nothing.
 *
 * <p>Each page is slowed {@value #TIMES} times alone, in a round of taps of its own, for two that are slowed at once
 * take each other's time where there are two processors (another page then took half as long again), and in a room they
 * are two machines. Another page has a tap after what it takes to leave the slowed page that was tapped, and from there
 * to be drawn by the slowed one that was not.
 */
final class SlowGlass {
    private static final int TIMES = 6;
    private static final int TAPS = 40;
    private static final int FIRST_LEFT_OUT = 4;
    /** A finger's pace, and long enough for the second breath. */
    private static final double BETWEEN_MILLIS = 800;
    private static final int TASKS_TOLD = 3;

    /**
     * So many taps, each with what it set going.
     *
     * @param opening what kept the tapped page busy while it was opened
     * @param lifts   when each finger was lifted
     * @param shown   when the tapped page drew a tile anew
     * @param sent    when each tap left
     * @param others  when the other page drew a tile anew
     * @param under   what kept either page busy under the taps
     */
    private record Round(List<Task> opening, List<Seen> lifts, List<Seen> shown, List<Seen> sent, List<Seen> others,
            List<Task> under) { }

    private SlowGlass() {
    }

    static void measure() throws IOException {
        System.out.printf("A tap on the glass, Chromium slowed %d times, %d processors; ms from the finger's lift%n"
                + "to reach: own tile within one frame (17 ms, and what is left of the one before), another page "
                + "within 150 ms, no task over 100 ms%n", TIMES, Runtime.getRuntime().availableProcessors());
        System.out.printf("%5s  %-24s %-24s %-22s %-22s%n", "seats", "own tile p50 p95 worst",
                "other page p50 p95 worst", "tasks at opening", "tasks under taps");
        try (Playwright playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                Browser browser = playwright.chromium().launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of(Optional.ofNullable(System.getenv("CHROMIUM"))
                                .orElse("/usr/bin/chromium"))).setArgs(List.of("--no-sandbox",
                                "--disable-background-networking", "--no-first-run", "--disable-component-update",
                                "--disable-sync")))) {
            for (int seats : Asked.numbers("seats", "8,24,40")) {
                try (TestBoard board = new TestBoard(Scratch.folder(), InstantSource.system(),
                        StreamLimits.USUAL)) {
                    measure(board, browser, seats, Asked.number("taps", TAPS));
                }
            }
        }
    }

    private static void measure(TestBoard board, Browser browser, int seats, int taps) {
        Round tapped = round(board, browser, seats, taps, TIMES, 1);
        Round untapped = round(board, browser, seats, taps, 1, TIMES);
        double[] leaving = after(tapped.lifts(), tapped.sent());
        double[] coming = after(untapped.sent(), untapped.others());
        List<Task> under = Stream.of(tapped, untapped).flatMap(round -> round.under().stream()).toList();
        System.out.printf("%5d  %-24s %-24s %-22s %-22s%n", seats, told(after(tapped.lifts(), tapped.shown()), taps),
                told(sums(leaving, coming), taps * taps), tasks(tapped.opening()), tasks(under));
        System.out.printf("       of the other page's: until the tap leaves %s, from there %s%n",
                told(leaving, taps).strip(), told(coming, taps).strip());
        tell("at opening", tapped.opening());
        tell("under taps", under);
        try (SlowedPage bare = SlowedPage.bare(browser, seats, TIMES)) {
            double[] own = after(tap(bare, seats, taps), bare.shown());
            System.out.printf("%5d  %-24s a bare page of so many boxes, one of which gets another colour%n", seats,
                    told(own, taps));
        }
    }

    /**
     * A class of its own, for a tile can be tapped only so often.
     *
     * @param slowed how much the page is slowed that is tapped
     * @param other  how much the page is slowed that is not
     */
    private static Round round(TestBoard board, Browser browser, int seats, int taps, int slowed, int other) {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":" + seats + ",\"startsAt\":\""
                + board.clock.instant() + "\"}");
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            board.tap(id, TestBoard.opening(step)).ok();
        }
        try (SlowedPage untapped = SlowedPage.of(board, browser, id, other);
                SlowedPage tapped = SlowedPage.of(board, browser, id, slowed)) {
            List<Task> opening = tapped.tasks();
            double from = System.currentTimeMillis();
            List<Seen> lifts = tap(tapped, seats, taps);
            List<Seen> sent = tapped.sent();
            return new Round(opening, lifts, tapped.shown(), sent.subList(FIRST_LEFT_OUT, sent.size()),
                    untapped.shown(), Stream.of(tapped, untapped).flatMap(page -> page.tasks().stream())
                            .filter(t -> t.at() >= from).toList());
        }
    }

    /** Tile after tile, as fingers do. @return when each was lifted, but for the first few */
    private static List<Seen> tap(SlowedPage page, int seats, int taps) {
        List<double[]> tiles = page.tiles(seats);
        for (int n = 0; n < FIRST_LEFT_OUT + taps; n++) {
            page.tap(tiles.get(n % seats));
            page.rest(BETWEEN_MILLIS);
        }
        return page.taps().subList(FIRST_LEFT_OUT, page.taps().size());
    }

    /** Every part of the one with every part of the other, sorted: neither knows of the other. */
    private static double[] sums(double[] some, double[] others) {
        return Arrays.stream(some).flatMap(one -> Arrays.stream(others).map(other -> one + other)).sorted().toArray();
    }

    /** How long after each tap its seat's tile was next drawn anew, sorted; what never was is left out. */
    private static double[] after(List<Seen> taps, List<Seen> shown) {
        return taps.stream().flatMap(tap -> shown.stream()
                .filter(s -> s.seat() == tap.seat() && s.at() > tap.at()).map(s -> s.at() - tap.at())
                .min(Comparator.naturalOrder()).stream()).mapToDouble(Double::doubleValue).sorted().toArray();
    }

    /** @param asked how many there were; what never came is told */
    private static String told(double[] sorted, int asked) {
        String missing = sorted.length == asked ? "" : " (%d of %d)".formatted(sorted.length, asked);
        return sorted.length == 0 ? "none" : "%6.0f %6.0f %6.0f%s".formatted(part(sorted, 0.5), part(sorted, 0.95),
                sorted[sorted.length - 1], missing);
    }

    private static double part(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    private static String tasks(List<Task> tasks) {
        return "%d, longest %.0f ms".formatted(tasks.size(), tasks.stream().mapToDouble(Task::ms).max().orElse(0));
    }

    private static void tell(String when, List<Task> tasks) {
        tasks.stream().sorted(Comparator.comparingDouble(Task::ms).reversed()).limit(TASKS_TOLD)
                .forEach(t -> System.out.printf("       %s: %.0f ms, %s%n", when, t.ms(), t.what()));
    }
}
