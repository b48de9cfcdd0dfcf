package benchpace.web.pairing;

import benchpace.store.Sessions;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** When each device last asked for something. Noted in memory, and written down every few minutes: no tap waits. */
final class LastSeen implements AutoCloseable {
    private static final Logger LOG = System.getLogger(LastSeen.class.getName());
    private static final long WRITTEN_EVERY_MINUTES = 5;

    private final Sessions sessions;
    private final Map<String, Instant> unwritten = new ConcurrentHashMap<>();
    private final ScheduledExecutorService writer = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "last-seen");
        thread.setDaemon(true);
        return thread;
    });

    LastSeen(Sessions sessions) {
        this.sessions = sessions;
        writer.scheduleWithFixedDelay(this::write, WRITTEN_EVERY_MINUTES, WRITTEN_EVERY_MINUTES, TimeUnit.MINUTES);
    }

    void note(String mark, Instant now) {
        unwritten.put(mark, now);
    }

    Optional<Instant> of(String mark) {
        return Optional.ofNullable(unwritten.get(mark));
    }

    void write() {
        Map<String, Instant> seen = new HashMap<>(unwritten);
        if (seen.isEmpty()) {
            return;
        }
        try {
            sessions.seen(seen);
            seen.forEach(unwritten::remove); // but for those that were seen again meanwhile
        } catch (RuntimeException e) {
            LOG.log(Level.WARNING, "when devices were last seen could not be written down; it is tried again", e);
        }
    }

    @Override public void close() {
        writer.shutdownNow();
        write();
    }
}
