package benchpace.store.sqlite;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The write-ahead log that the last board left, looked at before SQLite does: SQLite passes over, without a word,
 * whatever it cannot read of it. Numbers and checksums are those of https://sqlite.org/fileformat2.html, 4.1 and 4.2,
 * and of https://sqlite.org/walformat.html, 2.1.
 */
final class WriteAheadLog {
    private static final int HEADER = 32;
    private static final int FRAME_HEADER = 24;
    private static final int MAGIC = 0x377f0682;   // the lowest bit tells the byte order of the checksums
    private static final int INDEX_HEADER = 48;

    /** What SQLite makes of it. */
    enum State {
        /** All of it is read, but for a transaction that never came to its end. */
        READ,
        /** The very last record is not whole, as after a power cut in the middle of writing it. */
        CUT,
        /** Records in it are passed over. */
        PASSED_OVER
    }

    private final InputStream in;
    private final byte[] page;
    private final ByteBuffer header;
    private final ByteOrder order;
    private int sum0;
    private int sum1;
    private long frames;
    private long committed;

    private WriteAheadLog(InputStream in, ByteBuffer header) {
        this.in = in;
        this.header = header;
        this.order = (header.getInt(0) & 1) == 0 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        this.page = new byte[pageSize(header)];
    }

    /** How much of a log will be read. @param index the {@code -shm} file beside it, there or not */
    static State state(Path log, Path index) throws IOException {
        if (!Files.exists(log) || Files.size(log) == 0) {
            return State.READ;
        }
        try (InputStream in = new BufferedInputStream(Files.newInputStream(log), 1 << 16)) {
            ByteBuffer header = ByteBuffer.wrap(in.readNBytes(HEADER));
            if (header.capacity() < HEADER || (header.getInt(0) & ~1) != MAGIC || pageSize(header) == 0) {
                return State.PASSED_OVER;
            }
            WriteAheadLog read = new WriteAheadLog(in, header);
            State state = read.read();
            return read.committed < indexed(index, header) ? State.PASSED_OVER : state;
        }
    }

    private static int pageSize(ByteBuffer header) {
        int size = header.getInt(8);
        return size >= 512 && size <= 65_536 && Integer.bitCount(size) == 1 ? size : 0;
    }

    private State read() throws IOException {
        add(header.array(), HEADER - 8);
        if (sum0 != header.getInt(24) || sum1 != header.getInt(28)) {
            return State.PASSED_OVER;
        }
        State state = State.READ;
        for (ByteBuffer frame = frame(); frame.capacity() > 0; frame = frame()) {
            boolean ours = frame.capacity() == FRAME_HEADER
                    && frame.getInt(8) == header.getInt(16) && frame.getInt(12) == header.getInt(20);
            if (!ours) {
                return state; // of an earlier round of the log, which was read to its end
            }
            boolean whole = in.readNBytes(page, 0, page.length) == page.length;
            boolean commits = frame.getInt(4) != 0;
            if (state == State.READ && whole && sound(frame)) {
                frames++;
                committed = commits ? frames : committed;
            } else if (state == State.READ) {
                state = State.CUT;
            } else if (commits) {
                return State.PASSED_OVER;
            }
        }
        return state;
    }

    private ByteBuffer frame() throws IOException {
        return ByteBuffer.wrap(in.readNBytes(FRAME_HEADER));
    }

    private boolean sound(ByteBuffer frame) {
        add(frame.array(), 8);
        add(page, page.length);
        return sum0 == frame.getInt(16) && sum1 == frame.getInt(20);
    }

    private void add(byte[] bytes, int length) {
        ByteBuffer words = ByteBuffer.wrap(bytes, 0, length).order(order);
        while (words.remaining() >= 8) {
            sum0 += words.getInt() + sum1;
            sum1 += words.getInt() + sum0;
        }
    }

    /** How many frames the board had written for good, as far as the index of the same log tells; 0 if it does not. */
    private static long indexed(Path index, ByteBuffer log) throws IOException {
        if (!Files.isRegularFile(index)) {
            return 0;
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(index)) {
            bytes = in.readNBytes(2 * INDEX_HEADER);
        }
        boolean twice = bytes.length == 2 * INDEX_HEADER && java.util.Arrays.equals(bytes, 0, INDEX_HEADER,
                bytes, INDEX_HEADER, 2 * INDEX_HEADER);
        ByteBuffer header = ByteBuffer.wrap(bytes).order(ByteOrder.nativeOrder());
        // salts are copied as bytes, not as numbers
        return twice && ByteBuffer.wrap(bytes, 32, 8).equals(ByteBuffer.wrap(log.array(), 16, 8))
                ? Integer.toUnsignedLong(header.getInt(16)) : 0;
    }
}
