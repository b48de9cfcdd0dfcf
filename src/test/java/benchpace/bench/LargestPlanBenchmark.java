package benchpace.bench;

import benchpace.board.Mailbox;
import benchpace.board.view.ClassView;
import benchpace.board.view.MadeView;
import benchpace.live.ClassEvent;
import benchpace.plan.Plan;
import benchpace.words.MissingWords;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * How long a view of the largest class takes after a reading, as readings gather, and how long the screen of a class
 * beside it waits meanwhile. Prints; asserts nothing. {@code java -cp target/test-classes:target/classes:...
 * benchpace.bench.LargestPlanBenchmark [readings [activities]]}
 */
public final class LargestPlanBenchmark {
    private static final int LAST = 10;

    private LargestPlanBenchmark() { }

    public static void main(String[] args) throws InterruptedException {
        int readings = args.length == 0 ? 150 : Integer.parseInt(args[0]);
        int activities = args.length < 2 ? Plan.MOST_ACTIVITIES : Integer.parseInt(args[1]);
        try (LargestClass largest = new LargestClass(activities).poured()) {
            System.out.printf("first view, all poured: %d ms%n", view(largest));
            long[] took = new long[readings];
            for (int n = 0; n < readings; n++) {
                largest.read(n);
                took[n] = n < LAST || n >= readings - LAST ? view(largest) : 0;
            }
            System.out.printf("a view after one of the first %d readings: %d ms%n", LAST,
                    median(Arrays.copyOf(took, LAST)));
            System.out.printf("a view after one of the last %d of %d readings: %d ms%n", LAST, readings,
                    median(Arrays.copyOfRange(took, readings - LAST, readings)));
            System.out.printf("the same class a minute later: %d ms%n", minuteLater(largest));
            lag(largest, readings);
        }
    }

    private static long view(LargestClass largest) {
        long from = System.nanoTime();
        ClassView view = largest.board.view();
        if (!view.missing().models().isEmpty()) {
            throw new IllegalStateException(MissingWords.fact(view.missing()));
        }
        return (System.nanoTime() - from) / 1_000_000;
    }

    private static long minuteLater(LargestClass largest) {
        largest.pass(Duration.ofMinutes(1));
        return view(largest);
    }

    /** A note in the class beside it, just after a reading in the largest, both with a screen. */
    private static void lag(LargestClass largest, int readings) throws InterruptedException {
        try (Mailbox screen = largest.board.subscribe(); Mailbox beside = largest.other.subscribe()) {
            long alone = untilShown(largest, beside);
            long[] waits = new long[5];
            for (int i = 0; i < waits.length; i++) {
                largest.read(readings + i);
                waits[i] = untilShown(largest, beside);
                long seq = largest.board.live().seq();
                while (screen.take(Duration.ofMinutes(1)).filter(made -> isWhole(made, seq)).isEmpty()) {
                    // until the large one has been shown
                }
            }
            System.out.printf("the class beside it is shown after %d ms alone, %d ms while the largest is made%n",
                    alone, median(waits));
        }
    }

    private static long untilShown(LargestClass largest, Mailbox screen) throws InterruptedException {
        long from = System.nanoTime();
        largest.wish(largest.other, new ClassEvent.ClassNoted("hello"));
        long seq = largest.other.live().seq();
        Optional<MadeView> shown = Optional.empty();
        while (shown.filter(made -> isWhole(made, seq)).isEmpty()) {
            shown = screen.take(Duration.ofMinutes(1));
        }
        return (System.nanoTime() - from) / 1_000_000;
    }

    private static boolean isWhole(MadeView made, long seq) {
        return made.whole() && made.view().seq() == seq;
    }

    private static long median(long[] times) {
        long[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
