package benchpace.web.screen.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.plan.ActivityKind;
import benchpace.plan.Picture;
import benchpace.plan.SeatNumber;
import benchpace.plan.Vessel;
import benchpace.web.screen.Evening;
import benchpace.web.screen.guest.GuestPage;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What is drawn for what a class is doing now. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PresentDrawingTest {
    private static final int[] ALL = Evening.seats(1, 8);

    private static Evening evening() {
        return Evening.of("evening-pour", 8);
    }

    private static Picture shown(ClassView view) {
        return Drawing.present(view).orElseThrow().picture();
    }

    private static Evening poured() {
        return evening().open(0, "welcome").done(8, "vessel", ALL).open(9, "wicks").done(13, "wicks", ALL)
                .open(14, "fragrance").done(19, "fragrance", ALL).open(20, "before-wax").open(22, "mix")
                .done(28, "mix", ALL).open(29, "pour").done(33, "pour", ALL);
    }

    @Test void before_it_begins_an_apron_then_what_its_step_names() {
        assertThat(shown(evening().view(-12))).isEqualTo(Picture.WELCOME);
        assertThat(shown(evening().open(0, "welcome").done(8, "vessel", ALL).open(9, "wicks").view(10)))
                .isEqualTo(Picture.WICK);
    }

    @Test void while_candles_set_one_that_sets_and_the_hand_once_they_may_be_tried() {
        Evening evening = poured().open(34, "centre").done(36, "centre", ALL).open(37, "cure");

        assertThat(shown(evening.view(50))).isEqualTo(Picture.SETTING);
        ClassView late = evening.view(300);
        assertThat(late.cure().untried()).isNotEmpty();
        assertThat(shown(late)).isEqualTo(Picture.HAND_TEST);
    }

    @Test void a_class_that_poured_ends_with_a_candle_alight_and_another_with_a_parcel() {
        assertThat(shown(poured().event(120, new ClassEvent.ClassClosed()).view(121))).isEqualTo(Picture.FLAME);
        assertThat(shown(evening().event(120, new ClassEvent.ClassClosed()).view(121))).isEqualTo(Picture.WRAP);
    }

    @Test void the_vessel_is_the_one_that_most_seats_pour() {
        Evening evening = evening().open(0, "welcome");
        Vessel first = evening.live().plan().candles().get(0).vessel();
        assertThat(Drawing.of(Picture.POUR, evening.view(1)).vessel()).isEqualTo(first);

        String second = evening.live().plan().candles().get(1).id();
        IntStream.rangeClosed(1, 5).forEach(seat ->
                evening.event(1 + seat, new ClassEvent.CandleChosen(new SeatNumber(seat), second)));
        assertThat(Drawing.of(Picture.POUR, evening.view(8)).vessel())
                .isEqualTo(evening.live().plan().candles().get(1).vessel()).isNotEqualTo(first);
    }

    @Test void a_guest_sees_the_vessel_of_its_own_seat_and_of_the_candle_it_shares() {
        Evening evening = evening().open(0, "welcome");
        String second = evening.live().plan().candles().get(1).id();
        Vessel own = evening.live().plan().candles().get(1).vessel();
        ClassView view = evening.event(1, new ClassEvent.CandleChosen(new SeatNumber(3), second))
                .event(2, new ClassEvent.SeatPaired(new SeatNumber(3), new SeatNumber(4))).computed(8);

        assertThat(GuestPage.of(view, 3, "code").drawing().vessel()).isEqualTo(own);
        assertThat(GuestPage.of(view, 4, "code").drawing().vessel()).isEqualTo(own);
        assertThat(GuestPage.of(view, 1, "code").drawing().vessel()).isNotEqualTo(own)
                .isEqualTo(evening.live().plan().candles().get(0).vessel());
    }

    @Test void an_activity_has_its_own() {
        ClassView view = evening().view(-5);
        assertThat(Drawing.of(ActivityKind.REFRESHMENTS, view).picture()).isEqualTo(Picture.PAUSE);
        assertThat(Drawing.of(view.steps().get(3), view).picture()).isEqualTo(Picture.SCENT);
    }
}
