package benchpace.web.screen.history;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.history.Chosen;
import benchpace.history.Punctuality;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class HistoryAddressTest {

    private static HistoryAddress read(String address) {
        Map<String, String> parts = new LinkedHashMap<>();
        String query = URI.create(address).getRawQuery();
        if (query != null) {
            Arrays.stream(query.split("&")).map(part -> part.split("=", 2)).forEach(part ->
                    parts.put(part[0], URLDecoder.decode(part[1], StandardCharsets.UTF_8)));
        }
        return HistoryAddress.read(name -> Optional.ofNullable(parts.get(name)));
    }

    private static Chosen chosen(String place) {
        return new Chosen(Optional.of("evening-pour"), Optional.of(place), Optional.of(LocalDate.of(2026, 3, 4)),
                Optional.of(LocalDate.of(2026, 4, 5)), Optional.of(Punctuality.LATE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"The Tallow Loft", "", "a&b=c?d#e", "\uD83D\uDD6F \"x\"", "in the %41"})
    void a_choice_written_into_an_address_is_read_from_it_again(String place) {
        HistoryAddress read = read(new HistoryAddress(chosen(place), 1, List.of()).to(3));

        assertThat(read.chosen()).isEqualTo(chosen(place));
        assertThat(read.page()).isEqualTo(3);
        assertThat(read.faults()).isEmpty();
    }

    @Test void nothing_chosen_is_the_address_itself() {
        assertThat(read("/history").chosen()).isEqualTo(Chosen.ALL);
        assertThat(read("/history").to(1)).isEqualTo("/history");
    }

    @Test void what_is_left_empty_in_the_form_chooses_nothing() {
        assertThat(read("/history?plan=&room=&from=&until=&kept=")).isEqualTo(new HistoryAddress(Chosen.ALL, 1,
                List.of()));
    }

    @Test void what_is_no_day_is_told_and_the_rest_is_chosen() {
        HistoryAddress read = read("/history?from=2026-02-30&kept=on-time");

        assertThat(read.chosen()).isEqualTo(new Chosen(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.of(Punctuality.ON_TIME)));
        assertThat(read.faults()).singleElement().asString().contains("\"2026-02-30\" is no day");
    }
}
