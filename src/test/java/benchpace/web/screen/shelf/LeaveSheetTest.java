package benchpace.web.screen.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.words.Times;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LeaveSheetTest {
    private static String candle(double minute) {
        ClassView view = Evenings.cure().view(minute);
        return LeaveSheet.of(1, "", false, view.seat(1).candle().orElseThrow(), view.now(), view.now(), List.of(),
                "oak", view.now(), new Times(Evening.ZONE)).candle();
    }

    @Test void what_was_foreseen_is_told_as_past_once_it_is() {
        assertThat(candle(70)).startsWith("Ready about ");
        assertThat(candle(170)).startsWith("Was to be ready about ");
    }
}
