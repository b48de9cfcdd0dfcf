package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.plan.TableShape;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.words.Times;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The string-line chart as it is drawn: inside its frame, the flagged lines on top, and only by half minutes anew. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LinesChartTest {
    private static final Times TIMES = new Times(Evening.ZONE);

    private static LinesChart chart(ClassView view) {
        return LinesChart.of(view, TIMES);
    }

    private static List<int[]> points(LinesChart.Line line) {
        return Arrays.stream(line.points().split(" "))
                .map(p -> Arrays.stream(p.split(",")).mapToInt(Integer::parseInt).toArray()).toList();
    }

    @Test void every_line_stays_in_the_frame_and_climbs_from_left_to_right() {
        Evenings.all().forEach((name, view) -> {
            LinesChart chart = chart(view);
            for (LinesChart.Line line : chart.lines()) {
                List<int[]> points = points(line);
                for (int i = 0; i < points.size(); i++) {
                    assertThat(points.get(i)[0]).as(name).isBetween(chart.left(), chart.right());
                    assertThat(points.get(i)[1]).as(name).isBetween(chart.top(), chart.bottom());
                    if (i > 0) {
                        assertThat(points.get(i)[0]).as(name).isGreaterThanOrEqualTo(points.get(i - 1)[0]);
                    }
                }
            }
        });
    }

    @Test void the_flagged_line_is_the_flat_one_comes_on_top_and_carries_its_number() {
        LinesChart chart = chart(Evenings.went().view(24));
        LinesChart.Line last = chart.lines().get(chart.lines().size() - 1);

        assertThat(last.seat()).isEqualTo(4);
        assertThat(last.mark()).isEqualTo("behind");
        assertThat(chart.lines().stream().filter(l -> l.seat() != 4)).allMatch(l -> l.mark().equals("quiet"));
        assertThat(chart.tags()).extracting(LinesChart.Tag::seats).containsExactly("4");
        List<int[]> flat = points(last);
        assertThat(flat.get(flat.size() - 1)[1]).isEqualTo(flat.get(flat.size() - 2)[1]);
        assertThat(chart.words()).endsWith("The flat lines are those of seat 4.");
    }

    @Test void seats_flagged_at_one_level_share_one_tag() {
        LinesChart chart = chart(Evenings.several().view(21));

        assertThat(chart.tags()).hasSize(1);
        assertThat(chart.tags().get(0).seats()).isEqualTo("3, 4, 5\u2026");
    }

    @Test void a_tag_has_room_beside_the_chart_and_none_stands_on_another() {
        Evenings.all().forEach((name, view) -> {
            LinesChart chart = chart(view);
            int before = Integer.MAX_VALUE;
            for (LinesChart.Tag tag : chart.tags()) {
                assertThat(tag.x() + LinesChart.tagWidth(tag.seats())).as(name).isLessThanOrEqualTo(chart.width());
                assertThat(before - tag.y()).as(name).isGreaterThanOrEqualTo(13);
                before = tag.y();
            }
        });
    }

    @Test void the_names_of_the_steps_never_stand_on_each_other_nor_outside() {
        Evenings.all().forEach((name, view) -> {
            int before = Integer.MAX_VALUE;
            int letters = (chart(view).left() - 8) / 7; // of twelve pixels
            for (LinesChart.Rung rung : chart(view).rungs()) {
                if (!rung.name().isEmpty()) {
                    assertThat(before - rung.y()).as(name).isGreaterThanOrEqualTo(12);
                    assertThat(rung.name().length()).as(name).isLessThanOrEqualTo(letters);
                    assertThat(rung.more().length()).as(name).isLessThanOrEqualTo(letters);
                    assertThat(before - rung.y()).as(name).isGreaterThanOrEqualTo(rung.more().isEmpty() ? 12 : 24);
                    before = rung.y();
                }
            }
        });
    }

    @Test void the_names_of_a_plan_of_ours_stand_whole_beside_the_chart_of_a_table_of_eight() {
        ClassView view = Evenings.wicks().view(19.5);
        List<String> names = view.steps().stream().filter(s -> s.kind().needsTap()).map(s -> s.name()).toList();

        assertThat(chart(view).rungs()).filteredOn(r -> !r.name().isEmpty()).hasSizeGreaterThan(2)
                .allSatisfy(rung -> assertThat(names).contains((rung.name() + " " + rung.more()).strip()));
    }

    @Test void it_is_drawn_anew_by_half_minutes_and_not_in_between() {
        Evening evening = Evenings.wicks();

        assertThat(chart(evening.view(20.5))).isEqualTo(chart(evening.view(20.8)));
        assertThat(chart(evening.view(20.5))).isNotEqualTo(chart(evening.view(21)));
    }

    @Test void before_the_class_there_is_nothing_to_draw() {
        LinesChart chart = chart(Evenings.all().get("before"));

        assertThat(chart.empty()).isTrue();
        assertThat(chart.words()).isEqualTo("The lines begin with the class.");
    }

    @Test void it_stands_in_the_middle_of_a_horseshoe_with_room_and_under_any_other_table() {
        assertThat(LinesPlace.of(Evenings.all().get("twelve")).inside()).isTrue();
        assertThat(LinesPlace.of(Evenings.wicks().view(15)).inside()).as("eight seats leave no room").isFalse();
        for (TableShape shape : List.of(TableShape.LONG_TABLE, TableShape.TWO_TABLES, TableShape.ROWS)) {
            ClassView view = Evening.of(Evening.plan("evening-pour", shape), 12, List.of("")).open(0, "welcome")
                    .view(3);
            assertThat(LinesPlace.of(view).inside()).as(shape.name()).isFalse();
        }
    }
}
