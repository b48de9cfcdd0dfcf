package benchpace.bench;

import benchpace.bench.tap.BoardSide;
import benchpace.bench.tap.BothSides;
import benchpace.bench.tap.BothSides.Taken;
import benchpace.bench.tap.Flags;
import benchpace.bench.tap.Machine;
import benchpace.bench.tap.PartOfACore;
import benchpace.bench.tap.Scratch;
import benchpace.bench.tap.ScreenKind;
import benchpace.bench.tap.Side;
import benchpace.bench.tap.TapTable;
import benchpace.bench.tap.TapTimes;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * The board on a single-board computer in the shop: held to a quarter of a core and 128 MB of heap, {@code mvn -q -P
 * bench verify -Dbench=SmallMachine}. Prints how long taps take there beside the floor held alike, how long a start
 * takes there and on a machine that is free, and the resident memory idle and after many taps. What is to be reached
 * stands beside each figure; nothing is asserted. Options: {@code -Dseats=24}, {@code -Dscreens=10}, {@code
 * -Dtaps=}{@value #TAPS}, {@code -Drounds=}{@value #STARTS} starts, {@code -Dshort} for a tenth of the taps.
 */
final class SmallMachine {
    private static final int PERCENT = 25;
    private static final int TAPS = 150;
    private static final int STARTS = 4;
    private static final int WARM_UP = 30;
    private static final int FROM_MILLIS = 400;
    private static final int TO_MILLIS = 800;
    private static final int MANY_TAPS = 10_000;
    private static final int TAPS_A_CLASS = 1000;
    private static final long IDLE_MILLIS = 10_000;

    private SmallMachine() {
    }

    static void measure() throws IOException, InterruptedException {
        System.out.println(Machine.head("The board on a small machine", Flags.SMALL));
        Optional<PartOfACore> board = PartOfACore.of("board", PERCENT);
        Optional<PartOfACore> floor = PartOfACore.of("floor", PERCENT);
        if (board.isPresent() && floor.isPresent()) {
            try (PartOfACore forBoard = board.get(); PartOfACore forFloor = floor.get()) {
                taps(forBoard, forFloor);
                starts("a quarter of a core", forBoard.before(), 6);
            }
        } else {
            System.out.println("Nothing can be held to a part of a core here (no control group of Linux may be made), "
                    + "so that is not measured.\n");
        }
        starts("a free machine", List.of(), 1);
        memory();
    }

    private static void taps(PartOfACore forBoard, PartOfACore forFloor) throws IOException, InterruptedException {
        int seats = Asked.number("seats", 24);
        Taken taken = Taken.nothing(Asked.number("screens", 10));
        try (BothSides both = new BothSides(forBoard.before(), forFloor.before(), Flags.SMALL, FROM_MILLIS,
                TO_MILLIS)) {
            both.begin(seats, taken.screens(), 1);
            both.tap(WARM_UP, Taken.nothing(taken.screens().size()));
            both.tap(Asked.shortened(Asked.number("taps", TAPS)), taken);
        }
        System.out.printf("Held to a quarter of a core, %d to %d ms from tap to tap%n%s", FROM_MILLIS, TO_MILLIS,
                TapTable.of(seats, taken));
        System.out.printf(Locale.ROOT, "Last screen p99 %.0f ms, to reach 150; complete p99 %.0f ms, to reach 500%n%n",
                taken.board().millis(TapTimes.Kind.LAST, 99), taken.board().millis(TapTimes.Kind.WHOLE_LAST, 99));
    }

    private static void starts(String where, List<String> before, int toReachSeconds)
            throws IOException, InterruptedException {
        Path installed = Scratch.folder();
        double[] seconds = new double[Math.max(2, Asked.number("rounds", STARTS))];
        for (int n = 0; n < seconds.length; n++) {
            try (BoardSide board = BoardSide.launched(before, installed)) {
                seconds[n] = board.untilReady().toMillis() / 1000.0;
            }
        }
        System.out.printf(Locale.ROOT, "From the launcher's start to ready on %s: the first time %.2f s, then %.2f s "
                + "(middle of %d), to reach %d s%n", where, seconds[0], middle(DoubleStream.of(seconds).skip(1)),
                seconds.length - 1, toReachSeconds);
    }

    private static double middle(DoubleStream of) {
        double[] sorted = of.sorted().toArray();
        return sorted[sorted.length / 2];
    }

    private static void memory() throws IOException, InterruptedException {
        int taps = Asked.shortened(MANY_TAPS);
        try (BoardSide board = new BoardSide(List.of(), Flags.USUAL, Scratch.folder())) {
            Side.rest(IDLE_MILLIS);
            long idle = board.footprint().residentKib();
            for (int done = 0; done < taps; done += TAPS_A_CLASS) {
                board.begin(Asked.number("seats", 24), done);
                board.watchedBy(ScreenKind.mix(Asked.number("screens", 10)));
                board.hurry(Math.min(TAPS_A_CLASS, taps - done));
            }
            System.out.printf(Locale.ROOT, "%nResident %.0f MB idle, to reach 120; %.0f MB after %,d taps, to reach "
                    + "200%n", idle / 1024.0, board.footprint().residentKib() / 1024.0, taps);
        }
    }
}
