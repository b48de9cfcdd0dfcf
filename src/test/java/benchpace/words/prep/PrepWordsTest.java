package benchpace.words.prep;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Supply;
import benchpace.prep.Caution;
import benchpace.prep.Figure;
import benchpace.prep.PrepProblem;
import benchpace.prep.TestKits;
import benchpace.prep.card.DocumentItem;
import benchpace.prep.card.LabelItem;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.card.Provenance;
import benchpace.prep.card.SafetyLine;
import benchpace.prep.circuit.CircuitLine;
import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.supply.PlaceSetting;
import benchpace.prep.supply.SupplyLine;
import benchpace.words.PrepFigures;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrepWordsTest {
    private final PrepSheet six = PrepSheet.of(TestKits.plan(), 6, Map.of());

    @ParameterizedTest
    @EnumSource(Figure.class)
    void every_figure_is_asked_for_with_what_hangs_on_it(Figure figure) {
        assertThat(PrepWords.of(new PrepProblem.Wanting(figure, "x", "the pot"))).contains("wanting").endsWith(".")
                .containsAnyOf("worked out", "added up", "no sum", "allowed", "fits");
    }

    @Test void whole_grams_claim_no_tenths() {
        assertThat(PrepFigures.grams(53)).isEqualTo("53 g");
        assertThat(PrepFigures.grams(52.27)).isEqualTo("52.3 g");
    }

    @Test void every_problem_has_its_words() {
        Stream<PrepProblem> each = Stream.of(new PrepProblem.Wanting(Figure.CIRCUIT_AMPS, "a", "A"),
                new PrepProblem.NoCandle(), new PrepProblem.LoadOver("a", "A", 0.09, 0.085),
                new PrepProblem.NoCandleOfWax("a", "A", "palm"), new PrepProblem.WaxSaidTwoWays("a", "A", "soy"),
                new PrepProblem.NotMolten("a", "A", 45, 50), new PrepProblem.NotSolid("a", "A", 41, 38),
                new PrepProblem.CircuitOver("a", "A"), new PrepProblem.NoTimetable());

        List<String> said = each.map(PrepWords::of).toList();

        assertThat(said).hasSize(PrepProblem.class.getPermittedSubclasses().length).doesNotHaveDuplicates()
                .allMatch(sentence -> sentence.endsWith("."));
        assertThat(said.get(2)).isEqualTo("A: its fragrance is 9.89 % of the wax = 9 % of all that is poured, and the "
                + "makers allow at most 9.29 % of the wax = 8.5 % of all that is poured. Take less before this is "
                + "mixed.");
    }

    @Test void every_caution_has_its_words() {
        Stream<Caution> each = Stream.of(new Caution.AtFlashPoint("a", "A", 75, 65),
                new Caution.OverTheBrim("a", "A", 227, 200), new Caution.OnLonger("a", "A", 170, 255),
                new Caution.PluggedInNowhere("a", "A"), new Caution.OneWaxInSeveral("soy", List.of("A", "B")),
                new Caution.PouringStops("a", "A", 2));

        List<String> said = each.map(PrepWords::of).toList();

        assertThat(said).hasSize(Caution.class.getPermittedSubclasses().length).doesNotHaveDuplicates();
        assertThat(said.get(0)).contains("75 °C", "65 °C", "away", "maker").doesNotContain("must not");
        assertThat(said.get(2)).contains("4 h 15 min", "2 h 50 min");
    }

    @Test void a_circuit_says_why_by_which_rule_and_what_would_help() {
        assertThat(CircuitWords.reasons(six.circuits().get(0))).singleElement().asString()
                .contains("25.42 A", "1.25 times", "210.20(A)", "second hand");
        assertThat(CircuitWords.advice(six.circuits().get(0))).hasSize(2).first().asString()
                .contains("kettle never on while a melter here is", "fits");
    }

    @Test void that_something_counts_as_continuous_is_said_only_where_it_does() {
        Circuit wall = TestKits.WALL;
        Circuit british = new Circuit(wall.id(), wall.name(), wall.volts(), wall.amps(),
                Optional.of(Circuit.Rule.UK_13));
        CircuitLine line = six.circuits().get(0);

        assertThat(CircuitWords.plugged(line)).hasSize(2).last().asString().endsWith("(counts as continuous)");
        assertThat(CircuitWords.plugged(new CircuitLine(british, line.plugged(), line.designAmps(), line.verdict(),
                line.reasons(), line.advice()))).hasSize(2).noneMatch(said -> said.contains("continuous"));
    }

    @ParameterizedTest
    @EnumSource(Circuit.Rule.class)
    void every_rule_has_a_name(Circuit.Rule rule) {
        assertThat(CircuitWords.rule(rule)).isNotBlank();
    }

    @Test void the_venue_the_electrician_and_the_wall_stand_on_every_sheet() {
        assertThat(String.join(" ", CircuitWords.ALWAYS)).contains("Ask the venue", "licensed electrician",
                "straight into the wall", "Never plug an extension lead into another");
    }

    @Test void every_line_of_the_cards_says_where_it_is_from() {
        Stream.of(SafetyLine.values()).forEach(line -> assertThat(SafetyWords.of(line)).as(line.name())
                .endsWith(")").doesNotContain("()", "(;", "(, ")
                .matches(said -> said.contains("from memory") == (line.provenance() == Provenance.MEMORY)));
        Stream.of(DocumentItem.values()).forEach(item -> assertThat(LabelWords.of(item)).as(item.name())
                .endsWith(")").doesNotContain("()", "(;", "(, "));
        Stream.of(LabelItem.values()).forEach(item -> assertThat(LabelWords.of(item)).as(item.name())
                .endsWith(")").doesNotContain("()", "(;", "(, "));
    }

    @Test void burns_are_cooled_for_twenty_minutes_and_never_with_ice() {
        String burn = String.join(" ", SafetyLine.of(SafetyLine.Topic.BURN).stream().map(SafetyWords::text).toList());

        assertThat(burn).contains("cool running water for 20 minutes", "Never ice").containsOnlyOnce(" ice");
    }

    @Test void burning_wax_is_smothered_and_never_wetted() {
        String fire = String.join(" ", SafetyLine.of(SafetyLine.Topic.FIRE).stream().map(SafetyWords::text).toList());

        assertThat(fire).contains("lid", "Never water on hot or burning wax", "class B", "not water alone");
    }

    @Test void no_label_list_gives_a_verdict() {
        assertThat(LabelWords.NO_VERDICT).contains("not a verdict");
        Stream.of(LabelRegion.values()).forEach(region -> assertThat(LabelItem.of(region)).isNotEmpty());
        Stream.of(LabelItem.values()).map(LabelWords::of)
                .forEach(said -> assertThat(said).doesNotContainIgnoringCase("is legal", "compliant", "is safe"));
    }

    @Test void a_melter_that_nobody_pours_from_is_left_off() {
        PrepSheet tins = PrepSheet.of(TestKits.plan(), 6, Map.of("tin-paraffin", 6));

        assertThat(MelterWords.of(tins.melters().get(0)))
                .containsExactly("Nobody pours from it in this class: leave it off.");
    }

    @Test void what_two_places_share_is_told_as_one_to_both() {
        Supply jug = new Supply("jug", "Jug", 0.5, 0, 0, 1, 0, true, OptionalDouble.empty(), "");
        PlaceSetting place = new PlaceSetting(Optional.empty(), 6, List.of(new SupplyLine(jug, 6, 0, false),
                new SupplyLine(TestKits.WICK, 6, 0, false)));

        assertThat(SupplyWords.place(place)).containsExactly("1 x Jug to 2 places", "1 x Wick, cotton");
        assertThat(place.supplies()).extracting(SupplyWords::perPlace).containsExactly("1 to 2 places", "1 each");
    }

    @Test void a_stop_watch_quicker_than_the_wall_is_not_believed() {
        assertThat(MelterWords.measured(0.7)).isEqualTo("The stop-watch gives an efficiency of 0.70.");
        assertThat(MelterWords.measured(1.3)).contains("No melter is that quick", "Check");
    }
}
