package benchpace.bench.tap;

import benchpace.bench.tap.BothSides.Taken;
import benchpace.bench.tap.TapTimes.Kind;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What was taken, as text; every ratio is the board's over the floor's. */
public final class TapTable {
    private TapTable() {
    }

    /** One class and its screens. */
    public static String of(int seats, Taken taken) {
        StringBuilder table = new StringBuilder(String.format(Locale.ROOT,
                "Seats %d, screens %d (%s), taps %d%n  bytes a tap at once + with the complete view: %s%n"
                + "  %-29s %17s %17s %15s%n  %-29s %8s %8s %8s %8s %7s %7s%n", seats, taken.screens().size(),
                ScreenKind.told(taken.screens()), taken.board().taps(), bytes(taken), "", "board, ms", "floor, ms",
                "ratio", "", "p50", "p99", "p50", "p99", "p50", "p99"));
        for (Kind kind : Kind.values()) {
            table.append(row(kind, taken));
        }
        return table.toString();
    }

    private static String row(Kind kind, Taken taken) {
        double p50 = taken.board().millis(kind, 50);
        double p99 = taken.board().millis(kind, 99);
        if (kind.ofBoardAlone()) {
            return String.format(Locale.ROOT, "  %-29s %8.1f %8.1f%n", kind.words, p50, p99);
        }
        double floor50 = taken.floor().millis(kind, 50);
        double floor99 = taken.floor().millis(kind, 99);
        return String.format(Locale.ROOT, "  %-29s %8.1f %8.1f %8.1f %8.1f %7.2f %7.2f%n", kind.words, p50, p99,
                floor50, floor99, p50 / floor50, p99 / floor99);
    }

    private static String bytes(Taken taken) {
        long taps = taken.board().taps();
        return taken.bytes().entrySet().stream().map(e -> String.format(Locale.ROOT, "%s %,d + %,d",
                e.getKey().name().toLowerCase(Locale.ROOT), e.getValue().first() / taps, e.getValue().whole() / taps))
                .collect(Collectors.joining(", "));
    }

    /** The figures that something is to be reached for, by seats and screens. */
    public static String summary(Map<Integer, Map<Integer, Taken>> all) {
        StringBuilder table = new StringBuilder(String.format(Locale.ROOT,
                "%5s %7s   %25s   %15s   %24s%n%5s %7s   %8s %8s %7s   %7s %7s   %12s %11s%n", "", "",
                "last screen at once, p50", "ratio to floor", "complete, last screen", "seats", "screens", "board",
                "floor", "", "p50", "p99", "p50", "p99"));
        all.forEach((seats, of) -> of.forEach((screens, t) -> table.append(String.format(Locale.ROOT,
                "%5d %7d   %8.1f %8.1f %7s   %7.2f %7.2f   %12.1f %11.1f%n", seats, screens,
                t.board().millis(Kind.LAST, 50), t.floor().millis(Kind.LAST, 50), "ms", ratio(t, 50), ratio(t, 99),
                t.board().millis(Kind.WHOLE_LAST, 50), t.board().millis(Kind.WHOLE_LAST, 99)))));
        return table.append("To reach: of 10 screens p50 within 1.5 of the floor and p99 within 2; of 100 screens "
                + "within 2; complete p99 under 60 ms at 24 seats.").toString();
    }

    private static double ratio(Taken taken, double percentile) {
        return taken.board().millis(Kind.LAST, percentile) / taken.floor().millis(Kind.LAST, percentile);
    }
}
