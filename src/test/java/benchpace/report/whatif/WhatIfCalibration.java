package benchpace.report.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * How often the true saving lies in the range that is said, on invented classes whose change is known. {@code main}
 * prints a table by kind of change: {@code -Dexec.args="300"} classes of each size.
 */
public final class WhatIfCalibration {
    private static final int WAYS = 200;
    private static final double SAID = 0.5;

    private WhatIfCalibration() { }

    /** Of one kind of change. */
    static final class Score {
        private final List<double[]> cases = new ArrayList<>();

        void add(Saving said, double truth) {
            cases.add(new double[] {said.p10(), said.p50(), said.p90(), truth});
        }

        int count() {
            return cases.size();
        }

        /** Share of true savings within the range, its ends said to the whole minute. */
        double covered() {
            return cases.stream().filter(c -> c[3] >= c[0] - SAID && c[3] <= c[2] + SAID).count()
                    / (double) cases.size();
        }

        /** The same by the unrounded range. */
        double coveredBare() {
            return cases.stream().filter(c -> c[3] >= c[0] - 0.05 && c[3] <= c[2] + 0.05).count()
                    / (double) cases.size();
        }

        double width() {
            return cases.stream().mapToDouble(c -> c[2] - c[0]).average().orElse(0);
        }

        double error() {
            return cases.stream().mapToDouble(c -> Math.abs(c[3] - c[1])).average().orElse(0);
        }

        double bias() {
            return cases.stream().mapToDouble(c -> c[3] - c[1]).average().orElse(0);
        }

        double truth() {
            return cases.stream().mapToDouble(c -> c[3]).average().orElse(0);
        }
    }

    /** Every change of every class. @param seed of the first */
    static Map<String, Score> scores(int seats, int classes, long seed) {
        Map<String, Score> scores = new TreeMap<>();
        for (int j = 0; j < classes; j++) {
            InventedClasses invented = new InventedClasses(seed * 1_000_003 + j, seats);
            for (Answer answer : WhatIf.of(invented.past(), 1, WAYS)) {
                if (!(answer.change() instanceof Change.MoreHelp help && help.flags() == 0)) {
                    double truth = invented.saved(answer.change());
                    scores.computeIfAbsent(answer.change().getClass().getSimpleName(), k -> new Score())
                            .add(answer.saving(), truth);
                    scores.computeIfAbsent("all", k -> new Score()).add(answer.saving(), truth);
                }
            }
        }
        return scores;
    }

    public static void main(String[] args) {
        int classes = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        System.out.printf("%-6s %-14s %6s %8s %8s %7s %7s %7s %7s%n", "seats", "change", "cases", "covered", "bare",
                "width", "error", "bias", "truth");
        for (int seats : new int[] {5, 8, 12}) {
            scores(seats, classes, 1).forEach((kind, s) -> System.out.printf(Locale.ROOT,
                    "%-6d %-14s %6d %7.0f%% %7.0f%% %7.2f %7.2f %7.2f %7.2f%n", seats, kind, s.count(),
                    100 * s.covered(), 100 * s.coveredBare(), s.width(), s.error(), s.bias(), s.truth()));
        }
    }
}
