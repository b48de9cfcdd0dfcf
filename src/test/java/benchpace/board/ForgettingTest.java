package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.store.Remnants;
import benchpace.store.sqlite.StoreException;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForgettingTest {
    @TempDir Path folder;

    private static void sql(ForgettingBoard board, String text) {
        board.database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate(text);
            }
        });
    }

    @Test void candles_that_could_not_be_erased_with_their_class_follow_by_themselves() {
        ForgettingBoard.fill(folder, 1);
        List<String> word = List.of(ForgettingBoard.word(1));
        try (ForgettingBoard board = ForgettingBoard.open(folder)) {
            sql(board, "create temp trigger full before insert on shelf_event "
                    + "begin select raise(abort, 'disk full'); end");
            assertThatThrownBy(() -> board.forgetting.forget(board.of(1))).as("nobody is told that it is done")
                    .isInstanceOf(StoreException.class);
            assertThat(Remnants.of(folder, word)).isNotEmpty();
            sql(board, "drop trigger full");

            board.erasing().close();

            assertThat(Remnants.of(folder, word)).isEmpty();
            assertThat(board.told(0)).as("other classes keep theirs").isEqualTo(3);
            assertThat(board.shelf.shelf().entries()).filteredOn(candle -> candle.erased()).hasSize(1);
        }
    }

    @Test void a_class_whose_guests_cannot_be_forgotten_keeps_none_of_the_others_from_it() {
        ForgettingBoard.fill(folder, 1);
        try (ForgettingBoard board = ForgettingBoard.open(folder)) {
            board.forgetting.days(OptionalInt.of(1));
            String stubborn = board.of(1).id();
            sql(board, "create temp trigger stubborn before update on event when new.class_id = '" + stubborn
                    + "' begin select raise(abort, 'disk full'); end");
            board.later(Duration.ofDays(3));

            assertThatThrownBy(board.forgetting::forgetDue).isInstanceOf(StoreException.class);

            for (int n = 0; n < ForgettingBoard.CLASSES; n++) {
                assertThat(board.told(n)).as("class %s", n).isEqualTo(n == 1 ? 3 : 0);
            }
            sql(board, "drop trigger stubborn");
            board.forgetting.forgetDue();
            assertThat(board.told(1)).isZero();
        }
    }
}
