package benchpace.bench;

import benchpace.bench.tap.BothSides;
import benchpace.bench.tap.BothSides.Taken;
import benchpace.bench.tap.Flags;
import benchpace.bench.tap.Machine;
import benchpace.bench.tap.ScreenKind;
import benchpace.bench.tap.TapTable;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How long a tap takes until it is on the glass, beside the least that any program could do: {@code mvn -q -P bench
 * verify -Dbench=Glass}. For so many seats and screens each: acknowledged, on the middle and on the last screen, p50,
 * p99 and the ratio of both to the floor's; of the board also until the last screen has the complete view. Options:
 * {@code -Dseats=8,24,40}, {@code -Dscreens=1,10,100}, {@code -Dtaps=}{@value #TAPS} a round, {@code
 * -Drounds=}{@value #ROUNDS}, each with both programs started anew. It prints, and asserts nothing.
 */
final class Glass {
    private static final int ROUNDS = 2;
    private static final int TAPS = 100;
    private static final int WARM_UP = 60;
    private static final int FROM_MILLIS = 120;
    private static final int TO_MILLIS = 200;
    private static final int FIRST_LEFT_OUT = 5;

    private Glass() {
    }

    static void measure() throws IOException, InterruptedException {
        List<Integer> seats = Asked.numbers("seats", "8,24,40");
        List<Integer> screens = Asked.numbers("screens", "1,10,100");
        System.out.println(Machine.head("A tap until it is on the glass, board and floor in turns", Flags.USUAL));
        Map<Integer, Map<Integer, Taken>> taken = new TreeMap<>();
        for (int round = 0; round < Asked.number("rounds", ROUNDS); round++) {
            try (BothSides both = new BothSides(List.of(), List.of(), Flags.USUAL, FROM_MILLIS, TO_MILLIS)) {
                both.begin(24, ScreenKind.mix(10), round);
                both.tap(WARM_UP, Taken.nothing(10));
                for (int s : seats) {
                    for (int n : screens) {
                        Taken sofar = taken.computeIfAbsent(s, any -> new TreeMap<>())
                                .computeIfAbsent(n, Taken::nothing);
                        both.begin(s, sofar.screens(), round);
                        both.tap(FIRST_LEFT_OUT, Taken.nothing(n));
                        both.tap(Asked.number("taps", TAPS), sofar);
                    }
                }
            }
        }
        taken.forEach((s, of) -> of.forEach((n, t) -> System.out.println(TapTable.of(s, t))));
        System.out.println(TapTable.summary(taken));
    }
}
