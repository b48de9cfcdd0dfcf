package benchpace.board.cooling;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.ReadyWindow.Basis;
import benchpace.board.cooling.SaidRange.Phase;
import benchpace.plan.SeatNumber;
import benchpace.words.Times;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SaidRangeTest {
    private static final Instant T = Instant.parse("2027-03-04T19:00:00Z");
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    private static Instant at(double minute) {
        return T.plusSeconds(Math.round(minute * 60));
    }

    private static ReadyWindow window(double from, double until) {
        return new ReadyWindow(at(from), at((from + until) / 2), at(until), Basis.COMPUTED);
    }

    private static SaidRange range(double from, double until) {
        return new SaidRange(at(from), at(until), Basis.COMPUTED);
    }

    @Test void a_range_over_the_setting_back_of_clocks_says_which_hour_it_means() {
        SaidRange range = new SaidRange(Instant.parse("2026-10-25T00:45:00Z"), Instant.parse("2026-10-25T01:25:00Z"),
                Basis.COMPUTED);

        assertThat(new Times(ZONE).said(range)).isEqualTo("02:45 summer time to 02:25 winter time");
        assertThat(new Times(ZONE).briefly(range)).isEqualTo("02:45 summer\u201302:25 winter");
    }

    private static Map<SeatNumber, SaidRange> together(ReadyWindow... windows) {
        Map<SeatNumber, ReadyWindow> all = new TreeMap<>();
        for (ReadyWindow w : windows) {
            all.put(new SeatNumber(all.size() + 1), w);
        }
        return SaidRange.together(all);
    }

    @Test void it_is_rounded_outward_and_never_narrower_than_what_was_computed() {
        assertThat(SaidRange.of(window(8, 21))).isEqualTo(range(5, 25));
        assertThat(SaidRange.of(window(10, 25))).isEqualTo(range(10, 25));
        assertThat(new Times(ZONE).said(SaidRange.of(window(10, 25)))).isEqualTo("20:10 to 20:25");
        assertThat(new Times(ZONE).briefly(SaidRange.of(window(10, 25)))).isEqualTo("20:10\u201320:25");
    }

    @Test void it_is_never_one_instant_but_for_a_hand_test() {
        assertThat(SaidRange.of(window(10, 10))).isEqualTo(range(10, 15));
        assertThat(SaidRange.of(ReadyWindow.byHand(at(12))).until()).isEqualTo(at(12));
    }

    @Test void an_instant_is_before_inside_or_past_it_and_its_ends_belong_to_what_follows() {
        SaidRange range = range(10, 25);

        assertThat(range.phase(at(10).minusMillis(1))).isEqualTo(Phase.BEFORE);
        assertThat(range.phase(at(10))).isEqualTo(Phase.INSIDE);
        assertThat(range.phase(at(25).minusMillis(1))).isEqualTo(Phase.INSIDE);
        assertThat(range.phase(at(25))).isEqualTo(Phase.PAST);
    }

    @Test void candles_that_only_the_rounding_parts_are_said_to_be_ready_in_one_range() {
        assertThat(together(window(9.9, 30), window(10.1, 30.1)).values()).containsOnly(range(5, 35));
        assertThat(together(window(11, 29), window(17, 34), window(41, 59)).values())
                .containsExactly(range(10, 35), range(10, 35), range(40, 60));
    }

    @Test void no_two_ranges_of_a_class_are_alike_and_each_covers_its_candles() {
        ReadyWindow[] windows = new ReadyWindow[40];
        for (int i = 0; i < windows.length; i++) {
            windows[i] = window(40 + 0.7 * i, 70 + 0.9 * i);
        }
        Map<SeatNumber, SaidRange> said = together(windows);

        said.forEach((seat, range) -> {
            assertThat(range.covers(SaidRange.of(windows[seat.value() - 1]))).isTrue();
            assertThat(said.values()).filteredOn(other -> !other.equals(range)).noneMatch(range::isAlike);
        });
    }

    @Test void a_hand_test_is_in_no_range() {
        assertThat(together(window(10, 25), ReadyWindow.byHand(at(12)), window(11, 24)).values())
                .containsExactly(range(10, 25), SaidRange.of(ReadyWindow.byHand(at(12))), range(10, 25));
    }
}
