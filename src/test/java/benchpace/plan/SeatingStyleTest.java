package benchpace.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** {@code seating.css} has a class for each place of the largest drawings of {@link SeatingChart}, and no other. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SeatingStyleTest {
    private static final Pattern RULE = Pattern.compile("\\.([a-z]+-\\d+) \\{ (--[a-z]+: \\d+); }");

    private static int most(ToIntFunction<SeatingChart> length) {
        return Arrays.stream(TableShape.values()).flatMap(SeatingStyleTest::charts).mapToInt(length).max()
                .orElseThrow();
    }

    private static Stream<SeatingChart> charts(TableShape shape) {
        return IntStream.rangeClosed(1, SeatNumber.MOST).mapToObj(seats -> SeatingChart.of(shape, seats));
    }

    /** Lengths are counted from 1; positions from 0 in the chart and from 1 in a style sheet's grid. */
    private static Map<String, String> rules(String length, String lengths, String position, String span, int most) {
        Map<String, String> rules = new TreeMap<>();
        for (int i = 1; i <= most; i++) {
            rules.put(length + "-" + i, "--" + lengths + ": " + i);
            rules.put(position + "-" + (i - 1), "--" + position + ": " + i);
            rules.put(span + "-" + i, "--" + span + ": " + i);
        }
        return rules;
    }

    @Test void the_style_sheet_reaches_exactly_as_far_as_the_largest_chart() throws IOException {
        Map<String, String> wanted = rules("cols", "columns", "col", "across", most(SeatingChart::columns));
        wanted.putAll(rules("rows", "rows", "row", "deep", most(SeatingChart::rows)));

        List<String> css = Files.readAllLines(Path.of("static/css/seating.css"));
        Map<String, String> written = new TreeMap<>();
        css.forEach(line -> RULE.matcher(line).results().forEach(rule ->
                assertThat(written.put(rule.group(1), rule.group(2))).as(line).isNull()));

        assertThat(written).isEqualTo(wanted);
    }
}
