package benchpace.board.view;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What may be sent along with a question about the board: nobody's name, and no word that anybody wrote.
 *
 * @param versions  of the program and of what it runs on, by what they are of, in a fixed order
 * @param store     what the store is like; empty if it cannot be opened
 * @param fault     why it cannot, if so; else empty
 * @param degraded  what does not work as it should just now, a sentence each
 * @param log       what the program noted last, the oldest first
 * @param source    who was asked
 * @param classes   those that were chosen
 * @param unreadable why classes cannot be read back, one each
 */
public record ProblemFacts(Map<String, String> versions, Optional<StoreState> store, String fault,
                           List<String> degraded, List<String> log, Source source, List<ReportedClass> classes,
                           List<String> unreadable) {
    public ProblemFacts {
        degraded = List.copyOf(degraded);
        log = List.copyOf(log);
        classes = List.copyOf(classes);
        unreadable = List.copyOf(unreadable);
    }

    /** Who was asked. */
    public enum Source {
        /** The board itself, as it runs. */
        BOARD,
        /** The data of a board that runs, beside it: what it noted and what does not work is not known there. */
        BESIDE_BOARD,
        /** The data of a board that is stopped. */
        STOPPED
    }

    /**
     * The store.
     *
     * @param rows      of each table
     * @param integrity what its own check says: "ok", or what is wrong
     * @param settings  which are set
     */
    public record StoreState(SortedMap<String, Long> rows, List<String> integrity, List<String> settings) { }

    /**
     * A class.
     *
     * @param number      what it is called in the bundle, from 1
     * @param events      how many
     * @param lines       its nameless events, a line each, as a recorded class is read
     * @param startedFrom what it started from, as JSON: what its room and past classes had taught
     */
    public record ReportedClass(int number, Instant startsAt, long events, String lines, String startedFrom) { }
}
