package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.pacing.HomeOdds;
import benchpace.board.pacing.HomeTime;
import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** When everyone goes home: the promise while nothing else is known, late only when that is likely. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HomeLineTest {
    private static final Map<String, ClassView> EVENINGS = Evenings.all();

    private static HomeLine line(ClassView view) {
        return HomeLine.of(view, new Times(view.zone()));
    }

    private static void isThePromiseWithItsOdds(ClassView view) {
        HomeLine line = line(view);
        assertThat(line.when()).isEqualTo("20:41");
        assertThat(line.against()).matches("promised; odds of keeping it (less than |more than )?\\d in 10");
        assertThat(line.late()).isFalse();
        assertThat(line.driver()).as("nothing has happened that it could hang on").isEmpty();
    }

    @Test void before_the_class_it_is_the_promise_alone_as_the_prep_sheet_has_the_odds() {
        HomeLine line = line(EVENINGS.get("before"));

        assertThat(line.sentence()).isEqualTo("Home 20:41, promised");
        assertThat(line.basis()).isEmpty();
        assertThat(line.late()).isFalse();
    }

    @Test void one_tap_after_the_beginning_it_is_the_promise_with_its_odds() {
        ClassView one = Evening.of("evening-pour", 8).open(0, "welcome").done(6, "vessel", 1).view(6.5);

        isThePromiseWithItsOdds(one);
    }

    @Test void a_class_that_is_likely_late_says_by_how_much() {
        ClassView late = EVENINGS.get("wicks");
        HomeTime home = late.home();

        assertThat(home.odds().orElseThrow().late()).isGreaterThan(0.8);
        assertThat(line(late).late()).isTrue();
        assertThat(line(late).when()).matches("\\d\\d:\\d\\d to \\d\\d:\\d\\d");
        assertThat(line(late).against()).matches("\\d+ min after the promised 20:41");
    }

    @Test void a_class_whose_range_reaches_past_the_promise_is_not_late_for_that() {
        for (String name : new String[] {"computed", "cure-24"}) {
            ClassView open = EVENINGS.get(name);
            HomeTime home = open.home();
            assertThat(home.home(home.p90(), open.now())).isAfter(home.promised().plus(HomeOdds.GRACE));
            assertThat(line(open).late()).as(name).isFalse();
            assertThat(line(open).against()).matches("promised \\d\\d:\\d\\d; odds of keeping it \\d in 10");
        }
    }

    @Test void a_class_that_will_likely_be_through_sooner_says_so() {
        assertThat(line(EVENINGS.get("computed-24")).against()).matches("\\d+ min before the promised 20:51");
    }

    @Test void a_class_that_is_over_says_when_and_gives_no_odds() {
        ClassView punctual = Evenings.cure().event(100, new ClassEvent.ClassClosed()).view(200);

        assertThat(line(EVENINGS.get("closed")).sentence())
                .isEqualTo("Home ended 21:00, 19 min after the promised 20:41");
        assertThat(line(punctual).sentence()).isEqualTo("Home ended 20:40, as promised, 20:41");
    }

    @Test void once_everybody_has_trimmed_it_hangs_on_no_cure_any_more() {
        HomeLine line = line(trimmed().view(116));

        assertThat(line.driver()).isEmpty();
        assertThat(line.basis()).isEqualTo("By hand, then 9 min by the plan to finish.");
    }

    @Test void a_talk_that_has_had_its_minutes_keeps_nobody_longer() {
        Evening farewell = trimmed().done(118, "wrap", 1, 2, 3, 4, 5, 6, 7, 8).open(119, "farewell");

        assertThat(line(farewell.view(119)).basis()).endsWith(", then 3 min by the plan to finish.");
        assertThat(line(farewell.view(121)).basis()).endsWith(", then 1 min by the plan to finish.");
        assertThat(line(farewell.view(123)).basis()).isEqualTo("By hand.");
    }

    private static Evening trimmed() {
        return Evenings.cure().open(110, "trim").done(115, "trim", 1, 2, 3, 4, 5, 6, 7, 8);
    }

    @Test void minutes_are_what_one_finds_by_subtracting_the_times_beside_them() {
        ClassView seconds = Evenings.cure().event(119.9, new ClassEvent.ClassClosed()).view(121);

        assertThat(line(seconds).sentence()).isEqualTo("Home ended 20:59, 18 min after the promised 20:41");
        ClassView early = Evenings.cure().event(80.9, new ClassEvent.ClassClosed()).view(121);
        assertThat(line(early).sentence()).isEqualTo("Home ended 20:20, 21 min before the promised 20:41");
    }

    @Test void nothing_uncertain_is_said_to_be_sure() {
        assertThat(Phrases.odds(0.004)).isEqualTo("less than 1 in 10");
        assertThat(Phrases.odds(0.06)).isEqualTo("1 in 10");
        assertThat(Phrases.odds(0.64)).isEqualTo("6 in 10");
        assertThat(Phrases.odds(0.999)).isEqualTo("more than 9 in 10");
    }
}
