package benchpace.bench.tap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * The board and the floor side by side, tapped in turns: the board, and once all its screens have everything, the
 * floor with just the bytes that the board has sent. So whatever else the machine does meets both alike. A tap of the
 * board comes {@value #SHORTEST_MILLIS} to {@value #LONGEST_MILLIS} ms after the one before, as busy hands have it.
 */
public final class BothSides implements AutoCloseable {
    private static final int SHORTEST_MILLIS = 120;
    private static final int LONGEST_MILLIS = 200;
    private static final int BREATHER_MILLIS = 3;

    private final BoardSide board;
    private final FloorSide floor;
    private final Random random = new Random(7);

    /** @param before what starts both, such as what holds them to a part of the machine; may be empty */
    public BothSides(List<String> before, List<String> flags) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("bench");
        board = new BoardSide(before, flags, folder.resolve("board"));
        try {
            floor = new FloorSide(before, flags, Files.createDirectory(folder.resolve("floor")));
        } catch (IOException | RuntimeException | Error e) {
            board.close();
            throw e;
        }
    }

    public BoardSide board() {
        return board;
    }

    /** What both sides took. @param bytes of all taps together, to one screen of each kind */
    public record Taken(List<ScreenKind> screens, TapTimes board, TapTimes floor, Map<ScreenKind, Bytes> bytes) {
        public static Taken nothing(int screens) {
            return new Taken(ScreenKind.mix(screens), new TapTimes(), new TapTimes(), new EnumMap<>(ScreenKind.class));
        }
    }

    /** A class of so many seats, watched by so many screens on either side; to be tapped from then on. */
    public void begin(int seats, List<ScreenKind> screens, long seed) throws IOException, InterruptedException {
        board.begin(seats, seed);
        board.watchedBy(screens);
        floor.watchedBy(screens);
    }

    /** So many taps of either side in turns. */
    public void tap(int taps, Taken taken) throws IOException, InterruptedException {
        for (int n = 0; n < taps; n++) {
            long due = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(
                    SHORTEST_MILLIS + random.nextInt(LONGEST_MILLIS - SHORTEST_MILLIS));
            board.tap(taken.board());
            pause(BREATHER_MILLIS);
            Map<ScreenKind, Bytes> sent = board.takeBytes();
            sent.forEach((kind, bytes) -> taken.bytes().merge(kind, bytes, Bytes::plus));
            floor.send(sent);
            floor.tap(taken.floor());
            pause(TimeUnit.NANOSECONDS.toMillis(due - System.nanoTime()));
        }
    }

    private static void pause(long millis) {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        for (long left = until - System.nanoTime(); left > 0; left = until - System.nanoTime()) {
            LockSupport.parkNanos(left);
        }
    }

    @Override public void close() throws IOException, InterruptedException {
        try {
            board.close();
        } finally {
            floor.close();
        }
    }
}
