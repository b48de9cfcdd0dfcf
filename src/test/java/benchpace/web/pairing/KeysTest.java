package benchpace.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.time.SettableClocks;
import benchpace.board.time.SteadyClock;
import benchpace.store.PairingKeys;
import benchpace.store.sqlite.Database;
import benchpace.web.screen.shell.Role;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Links that were told while the clock was wrong. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class KeysTest {
    private static final Duration YEARS = Duration.ofDays(400);

    @TempDir Path folder;
    private final SettableClocks computer = new SettableClocks(Instant.parse("2027-03-04T18:30:00Z"), true);
    private final SteadyClock clock = computer.start();

    /** Somebody says that the computer's clock is right. */
    private Duration setClock(Duration by) {
        computer.jump(by);
        clock.instant();
        computer.passMinutes(1);
        return clock.follow();
    }

    @Test void what_was_printed_by_a_clock_far_behind_opens_on_when_that_is_set_right() {
        try (Database database = Database.open(folder)) {
            PairingKeys kept = new PairingKeys(database);
            Keys keys = new Keys(kept, clock);
            String printed = keys.helper();
            String askedFor = keys.askedForInstructorKey();

            keys.setRight(setClock(YEARS));

            assertThat(new Keys(kept, clock).open(printed)).as("after the next start").contains(Role.HELPER);
            assertThat(keys.open(askedFor)).as("for its hour").contains(Role.INSTRUCTOR);
        }
    }

    @Test void what_was_printed_by_a_clock_far_ahead_opens_no_longer_than_other_links() {
        try (Database database = Database.open(folder)) {
            PairingKeys kept = new PairingKeys(database);
            Keys keys = new Keys(kept, clock);
            String printed = keys.wall();
            keys.setRight(setClock(YEARS.negated()));

            computer.pass(Keys.PRINTED_STAYS.plusDays(1));

            assertThat(new Keys(kept, computer).open(printed)).isEmpty();
        }
    }
}
