package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.web.screen.Telling.Said;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Every page of many classes, their state as JSON, their calendar and the dialogue of leaving, read for all that is
 * told of a fact: when a candle or all of them are ready, when something of the wait begins and ends and for whom, when
 * everyone goes home, how many are done and who needs somebody. Whoever tells it, it is the same.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NothingSaidTwoWaysTest {
    /** By situation and fact. */
    private static final Map<String, Map<String, List<Said>>> TOLD = new LinkedHashMap<>();

    @BeforeAll static void read() {
        Map<String, ClassView> situations = new LinkedHashMap<>(Evenings.all());
        situations.keySet().removeIf(name -> name.matches("forty.*|.*-(16|20|40|24-long)")); // say nothing new
        situations.putAll(Evenings.closing());
        for (long number = 0; number < 1_000; number += 50) { // those that have activities in their wait
            situations.put("class " + number, SimulatedClass.of(number).view());
        }
        situations.entrySet().parallelStream()
                .map(s -> Map.entry(s.getKey(), PageReading.of(s.getValue(), EveryScreen.of(s.getValue()))))
                .toList().forEach(e -> TOLD.put(e.getKey(), e.getValue().byFact()));
        TOLD.put("looked back on", lookedBackOn());
    }

    /** What a report says of candles that still set, and the table at the same instant. */
    private static Map<String, List<Said>> lookedBackOn() {
        Evening evening = Evenings.cure();
        Telling telling = PageReading.of(evening.view(62), EveryScreen.of(evening.view(62)));
        new ReportReading(evening.report(62), telling).read();
        return telling.byFact();
    }

    @Test void no_fact_is_said_two_ways() {
        Map<String, Map<String, TreeSet<String>>> twice = new TreeMap<>();
        TOLD.forEach((situation, facts) -> facts.forEach((fact, said) -> {
            Map<String, TreeSet<String>> ways = said.stream().collect(Collectors.groupingBy(Said::value,
                    Collectors.mapping(Said::where, Collectors.toCollection(TreeSet::new))));
            if (ways.size() > 1) {
                twice.put(situation + ": " + fact, ways);
            }
        }));

        assertThat(twice).isEmpty();
    }

    @Test void every_kind_of_fact_is_told_more_than_once_in_several_classes() {
        Map<String, Long> shared = TOLD.values().stream().flatMap(facts -> facts.entrySet().stream())
                .filter(fact -> fact.getValue().size() > 1)
                .collect(Collectors.groupingBy(fact -> kind(fact.getKey()), TreeMap::new, Collectors.counting()));

        assertThat(shared).containsOnlyKeys("a candle is ready", "a candle has a skin",
                "all candles are ready by", "candles still setting are ready by",
                "candles still setting can be tried from",
                "done with the step of the heading", "everyone goes home", "how many candles are still setting",
                "it begins about", "it goes on until", "minutes until the first candle can be tried",
                "next seats", "next time", "a seat goes next to", "a seat is at", "seats at it now",
                "the first candle can be tried at", "who needs somebody", "why it needs somebody");
        assertThat(shared.values()).allSatisfy(times -> assertThat(times).isGreaterThanOrEqualTo(5));
    }

    /** Of classes that are over. What held one is a sentence in its row and a list on its look back. */
    @Test void what_a_row_of_the_history_says_of_a_class_its_look_back_says_in_the_same_words() {
        Map<String, Evening> over = new LinkedHashMap<>();
        over.put("over", Evenings.over());
        over.put("tried after the close", Evenings.triedAfterTheClose());
        over.put("one seat", Evening.of("evening-pour", 1).open(0, "welcome").done(5, "vessel", 1).open(6, "wicks")
                .done(9, "wicks", 1).open(10, "fragrance").done(13, "fragrance", 1).open(14, "mix").done(17, "mix", 1)
                .open(18, "pour").done(20, "pour", 1).event(80, new ClassEvent.JudgedSet(Evenings.seat(1)))
                .event(90, new ClassEvent.ClassClosed()));
        over.put("dry", Evening.of("evening-pour", 3).open(0, "welcome").event(20, new ClassEvent.ClassClosed()));
        for (long seed = 0; seed < 8; seed++) {
            over.put("made up " + seed, PastEvenings.of(seed));
        }
        Map<String, Long> kinds = new TreeMap<>();
        over.forEach((name, evening) -> {
            LookedBackOnTwice twice = LookedBackOnTwice.of(evening);
            assertThat(twice.differences()).as(name).isEmpty();
            twice.told().forEach(kind -> kinds.merge(kind, 1L, Long::sum));
        });
        assertThat(kinds).as("how many classes tell it").containsOnlyKeys("cures", "ended", "flags", "held", "idle",
                "not poured", "ready", "ready, nobody told");
        assertThat(kinds.get("cures")).isGreaterThan(4);
    }

    private static String kind(String fact) {
        return fact.replaceAll("^seat \\d+ (is ready|has a skin)", "a candle $1")
                .replaceAll("^seat \\d+ (goes|is at)", "a seat $1")
                .replaceAll("^why seat \\d+", "why it")
                .replaceAll("^per cent set of the candle .*", "per cent set of a candle")
                .replaceAll("^(next time|next seats) of .*", "$1")
                .replaceAll("^seats at .* now$", "seats at it now")
                .replaceAll("^.* (begins about|goes on until)$", "it $1");
    }
}
