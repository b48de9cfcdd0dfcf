package benchpace.web.screen.plans;

import benchpace.cure.room.MinuteRange;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.prep.evening.Bottleneck;
import benchpace.prep.evening.Setting;
import benchpace.prep.evening.TypicalEvening;
import benchpace.web.screen.instructor.LinesChart;
import benchpace.words.EveningWords;
import benchpace.words.Phrases;
import benchpace.words.RangeWords;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a plan comes to: its length, when each step begins, how long its candles take, and its pace lines.
 *
 * @param total   how long it takes on paper, turns at stations counted, as the list of plans says it
 * @param turns   of each step whose stations cannot serve everybody in time: why not, then what would do
 * @param candles each with its range; absent if they cannot be computed just now
 * @param lines   of an evening that is neither quick nor slow; absent if there is none to be had just now
 */
public record EditPreview(String total, List<Part> steps, List<List<String>> turns,
                          Optional<List<CandleLine>> candles, Optional<LinesChart> lines) {

    /** A step in its place, hours and minutes from the beginning. */
    public record Part(String name, String from, String until) { }

    /** One candle. @param ready from the pour until it may be tried */
    public record CandleLine(String name, String ready) {
        public static CandleLine of(String name, MinuteRange ready) {
            return new CandleLine(name, RangeWords.of(ready));
        }
    }

    public EditPreview {
        steps = List.copyOf(steps);
    }

    public static EditPreview of(Plan plan, Optional<List<CandleLine>> candles, Optional<TypicalEvening> typical) {
        List<Part> steps = new ArrayList<>();
        Duration at = Duration.ZERO;
        for (Step step : plan.steps()) {
            Duration until = at.plus(step.onPaper(plan.usualSeats()));
            steps.add(new Part(step.name(), clock(at), clock(until)));
            at = until;
        }
        return new EditPreview(Phrases.length(plan.onPaper(plan.usualSeats())), steps, turns(plan), candles,
                typical.map(evening -> EditLines.of(plan, evening)));
    }

    private static List<List<String>> turns(Plan plan) {
        return Bottleneck.of(plan, plan.usualSeats(), Setting.promised(plan)).stream()
                .map(bottleneck -> EveningWords.bottleneck(bottleneck, plan)).toList();
    }

    /** "1:05". */
    static String clock(Duration fromStart) {
        return fromStart.toHours() + ":" + String.format(java.util.Locale.ROOT, "%02d", fromStart.toMinutesPart());
    }
}
