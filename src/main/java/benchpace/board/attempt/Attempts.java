package benchpace.board.attempt;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The one wall around every {@link Model} of a class. A model that fails gives way to something honest, is noted once
 * in the log, and is tried again with the next event or the next minute, not with every look. Safe for use by many
 * threads.
 */
public final class Attempts {
    private static final Logger LOG = System.getLogger(Attempts.class.getName());

    private final String classId;
    private final Faults faults = new Faults();
    private final Map<Model, Failed> failed = new EnumMap<>(Model.class);

    /** For what a model failed. @param minute full */
    private record Failed(long seq, Instant minute) { }

    public Attempts(String classId) {
        this.classId = classId;
    }

    /**
     * What a model says, or what stands in for it.
     *
     * @param seq       the last event that the model is given
     * @param now       the instant that it is asked for
     * @param otherwise what rests on no model
     */
    public <T> T of(Model model, long seq, Instant now, Supplier<T> work, Supplier<T> otherwise) {
        Failed would = new Failed(seq, now.truncatedTo(ChronoUnit.MINUTES));
        if (would.equals(failure(model))) {
            return otherwise.get();
        }
        try {
            T made = work.get();
            mended(model);
            return made;
        } catch (RuntimeException | Error e) { // also a stack too deep: what it held is given back by now
            failed(model, would, e);
            return otherwise.get();
        }
    }

    private synchronized Failed failure(Model model) {
        return failed.get(model);
    }

    private synchronized void mended(Model model) {
        failed.remove(model);
    }

    private void failed(Model model, Failed at, Throwable fault) {
        synchronized (this) {
            failed.put(model, at);
        }
        if (faults.isNew(model.name(), fault)) {
            LOG.log(Level.ERROR, "class " + classId + ": model " + model + " cannot be computed", fault);
        }
    }

    /** What failed of a view, as it was tried last. */
    public synchronized Missing ofEveryView() {
        return Missing.of(failed.keySet().stream().filter(Model::ofEveryView).toList());
    }

    /**
     * All that is known to fail.
     *
     * @param seq the class's last event: what somebody asked for before it may be well by now
     */
    public synchronized Missing now(long seq) {
        return Missing.of(failed.entrySet().stream().filter(e -> e.getKey().ofEveryView() || e.getValue().seq() == seq)
                .map(Map.Entry::getKey).toList());
    }

    /** Which of these failed when they were tried last. */
    public synchronized Missing among(Model... models) {
        return Missing.of(Stream.of(models).filter(failed::containsKey).toList());
    }
}
