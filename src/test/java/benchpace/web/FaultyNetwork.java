package benchpace.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A wireless network as shops have it, between a device and the board: it lets all through until it has a fault. */
public final class FaultyNetwork implements AutoCloseable {
    private static final Pattern LENGTH = Pattern.compile("(?i)\r\ncontent-length: *(\\d+)");
    private static final Duration DELAY = Duration.ofMillis(700);
    /** 20 kB a second. */
    private static final int PIECE = 500;
    private static final Duration PIECE_TAKES = Duration.ofMillis(25);

    public enum Fault {
        NONE,
        /** Everything takes a while. */
        LATE,
        /** 20 kB a second each way, on each connection. */
        SLOW,
        /** What changes something arrives twice, the second time on a connection of its own. */
        TWICE,
        /** The connection breaks in the middle of what is sent to the board. */
        CUT_IN_REQUEST,
        /** The connection breaks in the middle of the board's answer: the board has done what was asked. */
        CUT_IN_ANSWER,
        /** Every connection is reset, and every new one. */
        RESET,
        /** Connections stay open and nothing comes through, as behind a router that was switched off. */
        SWALLOWED
    }

    private final ServerSocket door;
    private final int board;
    private final Set<Line> lines = ConcurrentHashMap.newKeySet();
    private final AtomicInteger struck = new AtomicInteger();
    private volatile Fault fault = Fault.NONE;

    public FaultyNetwork(TestBoard board) throws IOException {
        this.board = board.port();
        door = new ServerSocket(0, 50, InetAddress.getByName("127.0.0.1"));
        start("network", () -> {
            while (true) {
                Line line = new Line(door.accept());
                lines.add(line);
                start("network-up", line::up);
                start("network-down", line::down);
            }
        });
    }

    public int port() {
        return door.getLocalPort();
    }

    /** From now on. */
    public void has(Fault what) {
        struck.set(0);
        fault = what;
        if (what == Fault.RESET) {
            lines.forEach(Line::reset);
        } else if (what == Fault.SWALLOWED) {
            lines.forEach(line -> line.deaf = true);
        }
    }

    /** How many requests met the fault so far. */
    public int struck() {
        return struck.get();
    }

    /** All is well again; what nobody heard of any more is reset at last. */
    public void recovers() {
        fault = Fault.NONE;
        lines.stream().filter(line -> line.deaf).forEach(Line::reset);
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void start(String name, Work work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (IOException closed) {
                // by either end, or by the test
            }
        }, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** One connection of the device, and the board's end of it. */
    private final class Line {
        private final Socket device;
        private final Socket server;
        private volatile boolean deaf = fault == Fault.SWALLOWED;
        private volatile boolean cut;

        Line(Socket device) throws IOException {
            this.device = device;
            this.server = new Socket("127.0.0.1", board);
        }

        void up() throws IOException {
            try {
                for (byte[] request = request(device.getInputStream()); request.length > 0;
                        request = request(device.getInputStream())) {
                    pass(request);
                }
            } finally {
                close();
            }
        }

        private void pass(byte[] request) throws IOException {
            boolean changes = request[0] == 'P';
            Fault now = fault;
            if (now != Fault.NONE && (changes || now == Fault.RESET || deaf)) {
                struck.incrementAndGet();
            }
            if (deaf) {
                return;
            }
            if (now == Fault.RESET) {
                reset();
            } else if (now == Fault.CUT_IN_REQUEST && changes) {
                server.getOutputStream().write(request, 0, request.length - 20);
                reset();
            } else {
                cut |= now == Fault.CUT_IN_ANSWER && changes;
                send(request, request.length, server.getOutputStream());
                if (now == Fault.TWICE && changes) {
                    again(request);
                }
            }
        }

        private void again(byte[] request) throws IOException {
            try (Socket other = new Socket("127.0.0.1", board)) {
                other.getOutputStream().write(request);
                other.getInputStream().read();
            }
        }

        void down() throws IOException {
            byte[] piece = new byte[16_384];
            try {
                for (int n = server.getInputStream().read(piece); n >= 0; n = server.getInputStream().read(piece)) {
                    if (deaf) {
                        continue;
                    }
                    send(piece, cut ? n / 2 : n, device.getOutputStream());
                    if (cut) {
                        reset();
                    }
                }
            } finally {
                if (!deaf) {
                    close();
                }
            }
        }

        /** Ends it as a router does that has forgotten it: by a reset, not by a goodbye. */
        void reset() {
            try {
                device.setSoLinger(true, 0);
                server.setSoLinger(true, 0);
            } catch (IOException closed) {
                // it is over anyway
            }
            close();
        }

        void close() {
            lines.remove(this);
            try (device; server) {
                deaf = true;
            } catch (IOException closed) {
                // it is over anyway
            }
        }
    }

    private void send(byte[] bytes, int length, OutputStream to) throws IOException {
        Fault now = fault;
        if (now == Fault.LATE) {
            LockSupport.parkNanos(DELAY.toNanos());
        }
        for (int from = 0; from < length; from += PIECE) {
            int until = now == Fault.SLOW ? Math.min(length, from + PIECE) : length;
            to.write(Arrays.copyOfRange(bytes, from, until));
            if (now != Fault.SLOW) {
                return;
            }
            LockSupport.parkNanos(PIECE_TAKES.toNanos());
        }
    }

    /** The next whole request: its header, and a body of the length told there. Empty at the end. */
    private static byte[] request(InputStream in) throws IOException {
        ByteArrayOutputStream request = new ByteArrayOutputStream();
        for (int c = in.read(); c >= 0; c = in.read()) {
            request.write(c);
            String head = c == '\n' ? request.toString(StandardCharsets.ISO_8859_1) : "";
            if (head.endsWith("\r\n\r\n")) {
                Matcher length = LENGTH.matcher(head);
                request.writeBytes(in.readNBytes(length.find() ? Integer.parseInt(length.group(1)) : 0));
                return request.toByteArray();
            }
        }
        return new byte[0];
    }

    @Override public void close() throws IOException {
        door.close();
        lines.forEach(Line::close);
    }
}
