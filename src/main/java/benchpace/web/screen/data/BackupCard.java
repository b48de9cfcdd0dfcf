package benchpace.web.screen.data;

import benchpace.board.Backups.State;
import benchpace.store.backup.Holdings;
import benchpace.words.BackupWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.Optional;

/**
 * Backups on the page of what is kept.
 *
 * @param last  when one was last made, in words
 * @param due   a gentle word after a long time without one; may be empty
 * @param state how it stands with one, in words; may be empty
 * @param making one is being made
 * @param ready one that can be fetched
 */
public record BackupCard(String last, String due, String state, boolean making, Optional<Fetched> ready,
                         String folder) {

    /** @param name of the file */
    public record Fetched(String name, String address, String size) { }

    /** @param anyClass whether there is something to lose */
    public static BackupCard of(State state, Optional<Instant> last, boolean anyClass, String folder, Instant now,
                                Times times) {
        Optional<Fetched> ready = state instanceof State.Ready done ? Optional.of(new Fetched(done.name(),
                address(done), BackupWords.size(done.made().bytes()))) : Optional.empty();
        return new BackupCard(BackupWords.last(last, now, times), BackupWords.due(last, now, anyClass), words(state),
                state instanceof State.Making, ready, folder);
    }

    /** How it stands, in a sentence; empty while none is made. */
    public static String words(State state) {
        if (state instanceof State.Making making) {
            return switch (making.stage()) {
                case COPYING -> BackupWords.copying(making.done(), making.of());
                case COUNTING -> BackupWords.addingUp(making.done(), making.of());
                case READING -> BackupWords.readingBack(making.done(), making.of());
            };
        }
        if (state instanceof State.Ready ready) {
            Holdings held = ready.made().manifest().holdings();
            return BackupWords.ready(held.classes(), held.events(), held.plans(), held.unreadable());
        }
        return state instanceof State.Failed failed ? BackupWords.failed(failed.why()) : "";
    }

    public static String address(State.Ready ready) {
        return "/data/backup/" + ready.name();
    }
}
