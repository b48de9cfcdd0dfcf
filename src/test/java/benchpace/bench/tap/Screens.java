package benchpace.bench.tap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedSelectorException;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * All screens of one side, read by one thread, so that watching takes as little of the machine as it can. Each keeps
 * when it knew of what, in nanoseconds of {@link System#nanoTime}.
 */
public final class Screens implements AutoCloseable {
    private static final int READ_AT_ONCE = 256 * 1024;

    private final Selector selector;
    private final List<Screen> screens = new ArrayList<>();
    private final ByteBuffer buffer = ByteBuffer.allocate(READ_AT_ONCE);
    private long awaited;
    private long missing;
    private String broken = "";

    /** One screen, and when it knew of the taps since it opened. */
    private final class Screen implements StateLines.Heard {
        private final ScreenKind kind;
        private final SocketChannel channel;
        private final StateLines lines = new StateLines(this);
        private long[] first = new long[1024];
        private long[] whole = new long[1024];
        private long firstSeq;
        private long wholeSeq;
        private long readNanos;
        private long firstBytes;
        private long wholeBytes;

        Screen(ScreenKind kind, SocketChannel channel) {
            this.kind = kind;
            this.channel = channel;
        }

        /** What is newer takes the place of what it overtook: a screen that shows tap 7 shows tap 6. */
        @Override public void state(long seq, StateLines.Breath breath, long bytes) {
            if (firstSeq == 0) {
                firstSeq = seq; // all that it is given at the beginning
                wholeSeq = breath == StateLines.Breath.FIRST ? 0 : seq;
                return;
            }
            for (; firstSeq < seq; firstSeq++) {
                first = put(first, firstSeq + 1);
            }
            if (breath != StateLines.Breath.FIRST) {
                for (wholeSeq = Math.max(wholeSeq, 1); wholeSeq < seq; wholeSeq++) {
                    whole = put(whole, wholeSeq + 1);
                }
                wholeBytes += breath == StateLines.Breath.WHOLE ? bytes : 0;
            }
            firstBytes += breath == StateLines.Breath.WHOLE ? 0 : bytes;
        }

        private long[] put(long[] times, long seq) {
            long[] enough = seq < times.length ? times : Arrays.copyOf(times, (int) Math.max(seq + 1, 2 * seq));
            enough[(int) seq] = readNanos;
            return enough;
        }

        private void read() throws IOException {
            buffer.clear();
            if (channel.read(buffer) < 0) {
                throw new IOException("the stream has ended");
            }
            readNanos = System.nanoTime();
            long before = wholeSeq;
            lines.read(buffer.array(), buffer.position());
            if (before < awaited && wholeSeq >= awaited && --missing == 0) {
                Screens.this.notifyAll();
            }
        }
    }

    private Screens() throws IOException {
        selector = Selector.open();
    }

    /**
     * Opens them, a stream each, and waits until each shows something.
     *
     * @param address of the streams of a kind
     */
    static Screens open(int port, String token, List<ScreenKind> kinds,
                        Function<ScreenKind, String> address) throws IOException {
        Screens all = new Screens();
        for (ScreenKind kind : kinds) {
            SocketChannel channel = SocketChannel.open(new InetSocketAddress("127.0.0.1", port));
            channel.write(ByteBuffer.wrap(("GET " + address.apply(kind) + " HTTP/1.1\r\nHost: localhost\r\n"
                    + "Authorization: Bearer " + token + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII)));
            channel.configureBlocking(false);
            Screen screen = all.new Screen(kind, channel);
            channel.register(all.selector, SelectionKey.OP_READ, screen);
            all.screens.add(screen);
        }
        Thread reader = new Thread(all::readAll, "screens");
        reader.setDaemon(true);
        reader.start();
        return all;
    }

    private void readAll() {
        try {
            while (selector.isOpen()) {
                selector.select(this::read);
            }
        } catch (ClosedSelectorException closed) {
            // by whoever opened it
        } catch (IOException e) {
            breaks(e);
        }
    }

    private synchronized void read(SelectionKey key) {
        try {
            ((Screen) key.attachment()).read();
        } catch (IOException | RuntimeException e) {
            key.cancel();
            breaks(e);
        }
    }

    private synchronized void breaks(Exception e) {
        broken = broken.isEmpty() ? e.toString() : broken;
        notifyAll();
    }

    /**
     * Waits until every screen has the complete view of a tap, or of a later one.
     *
     * @throws IllegalStateException if one of them broke off or does not get it in time
     */
    public synchronized void awaitWhole(long seq, Duration patience) throws InterruptedException {
        awaited = seq;
        missing = screens.stream().filter(screen -> screen.wholeSeq < seq).count();
        long deadline = System.nanoTime() + patience.toNanos();
        while (missing > 0 && broken.isEmpty()) {
            long left = TimeUnit.NANOSECONDS.toMillis(deadline - System.nanoTime());
            if (left <= 0) {
                throw new IllegalStateException(missing + " of " + screens.size() + " screens do not show tap " + seq);
            }
            wait(left);
        }
        if (!broken.isEmpty()) {
            throw new IllegalStateException("a screen broke off: " + broken);
        }
    }

    /** When each knew what the tap itself changed, the earliest first. */
    synchronized long[] first(long seq) {
        return sorted(screen -> screen.first[(int) seq]);
    }

    /** When each had the complete view, the earliest first. */
    synchronized long[] whole(long seq) {
        return sorted(screen -> screen.whole[(int) seq]);
    }

    private long[] sorted(ToLongFunction<Screen> time) {
        return screens.stream().mapToLong(time).sorted().toArray();
    }

    /** Bytes of events that came to one screen of each kind since the last call: of the first breath, of the second. */
    synchronized Map<ScreenKind, Bytes> takeBytes() {
        Map<ScreenKind, Bytes> taken = new EnumMap<>(ScreenKind.class);
        for (Screen screen : screens) {
            taken.putIfAbsent(screen.kind, new Bytes(screen.firstBytes, screen.wholeBytes));
            screen.firstBytes = 0;
            screen.wholeBytes = 0;
        }
        return taken;
    }

    @Override public void close() {
        try {
            selector.close();
            for (Screen screen : screens) {
                screen.channel.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
