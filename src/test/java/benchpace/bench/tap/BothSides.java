package benchpace.bench.tap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/**
 * The board and the floor side by side, tapped in turns: the board, and once all its screens have everything, the
 * floor with just the bytes that the board has sent. So whatever else the machine does meets both alike.
 */
public final class BothSides implements AutoCloseable {
    private static final int BREATHER_MILLIS = 3;

    private final BoardSide board;
    private final FloorSide floor;
    private final int fromMillis;
    private final int toMillis;
    private final Random random = new Random(7);

    /**
     * Starts both.
     *
     * @param forBoard   what starts it, such as what holds it to a part of the machine; may be empty
     * @param fromMillis how soon a tap of the board may come after the one before, if its screens have all by then
     * @param toMillis   how late
     */
    public BothSides(List<String> forBoard, List<String> forFloor, List<String> flags, int fromMillis, int toMillis)
            throws IOException, InterruptedException {
        this.fromMillis = fromMillis;
        this.toMillis = toMillis;
        Path folder = Scratch.folder();
        board = new BoardSide(forBoard, flags, folder.resolve("board"));
        try {
            floor = new FloorSide(forFloor, flags, Files.createDirectory(folder.resolve("floor")));
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
            long due = System.nanoTime()
                    + TimeUnit.MILLISECONDS.toNanos(fromMillis + random.nextInt(toMillis - fromMillis));
            board.tap(taken.board());
            Side.rest(BREATHER_MILLIS);
            Map<ScreenKind, Bytes> sent = board.takeBytes();
            sent.forEach((kind, bytes) -> taken.bytes().merge(kind, bytes, Bytes::plus));
            floor.send(sent);
            floor.tap(taken.floor());
            Side.rest(TimeUnit.NANOSECONDS.toMillis(due - System.nanoTime()));
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
