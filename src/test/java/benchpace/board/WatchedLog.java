package benchpace.board;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** What a class writes to the log, while it is watched, kept from the console. */
public final class WatchedLog extends Handler implements AutoCloseable {
    private final Logger log;
    private final List<LogRecord> records = new CopyOnWriteArrayList<>();

    public WatchedLog(String name) {
        this.log = Logger.getLogger(name);
        log.setUseParentHandlers(false);
        log.addHandler(this);
    }

    public List<LogRecord> records() {
        return records;
    }

    @Override public void publish(LogRecord record) {
        records.add(record);
    }

    @Override public void flush() {
        // nothing is held back
    }

    @Override public void close() {
        log.removeHandler(this);
        log.setUseParentHandlers(true);
    }
}
