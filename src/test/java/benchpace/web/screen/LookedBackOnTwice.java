package benchpace.web.screen;

import benchpace.board.view.ClassReport;
import benchpace.board.view.FiguresMaker;
import benchpace.history.PastClass;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.web.screen.history.HistoryAddress;
import benchpace.web.screen.history.HistoryPage;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.report.ReportPage;
import benchpace.words.Times;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One class that is over, as its row among past classes tells it and as its look back does. */
record LookedBackOnTwice(List<String> row, ReportPage page, String sheet) {
    private static final Times TIMES = new Times(Evening.ZONE);
    private static final double MINUTE = 240;
    private static final Pattern PART = Pattern.compile("(.+), (\\d+ min)");

    static LookedBackOnTwice of(Evening evening) {
        ClassReport report = evening.report(MINUTE);
        Plan plan = report.view().plan();
        PastClass past = new PastClass(report.view().id(), report.view().name(), plan.id().value(), plan.name(), "",
                Evening.START, report.view().seats().size(), false, 0, PastClass.Standing.RECKONED,
                FiguresMaker.of(report), plan.steps().stream().collect(Collectors.toMap(s -> s.id().value(),
                        Step::name)));
        HistoryPage history = HistoryPage.of(new HistoryPage.Given(List.of(past), HistoryAddress.read(
                name -> Optional.empty())), EveryScreen.LEAD, TIMES);
        ReportPage page = ReportPage.of(report, LessonPanel.of(Optional.empty(), plan, TIMES), EveryScreen.LEAD,
                TIMES);
        return new LookedBackOnTwice(history.months().get(0).rows().get(0).figures(), page,
                Telling.plain(new Screens().report(report, Optional.empty(), plan, EveryScreen.LEAD,
                        SampleGuests.known())));
    }

    /** What the row says and the look back does not, or not so. */
    List<String> differences() {
        return row.stream().flatMap(sentence -> sentence.startsWith("Held by ") ? unknownCauses(sentence)
                : sheet.contains(sentence) ? Stream.of() : Stream.of(sentence)).toList();
    }

    private Stream<String> unknownCauses(String held) {
        return Stream.of(held.substring("Held by ".length(), held.length() - 1).split("; ")).filter(part -> {
            Matcher told = PART.matcher(part);
            return !told.matches() || page.causes().stream().flatMap(g -> g.causes().stream()).noneMatch(
                    c -> c.what().equalsIgnoreCase(told.group(1)) && c.minutes().equals(told.group(2)));
        });
    }

    /** Which facts its row tells. */
    List<String> told() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("The class ended at", "ended");
        kinds.put("The last candle was", "ready");
        kinds.put("Nobody told when", "ready, nobody told");
        kinds.put("No candle was poured", "not poured");
        kinds.put("Held by|No step and no wait", "held");
        kinds.put("[^.]* in the wait of", "idle");
        kinds.put("\\d+ flags?|One flag|Nobody was flagged", "flags");
        kinds.put("[^.]* hand tests? came", "cures");
        return row.stream().map(sentence -> kinds.entrySet().stream()
                .filter(k -> Pattern.compile("^(?:" + k.getKey() + ")").matcher(sentence).find()).findFirst()
                .orElseThrow(() -> new AssertionError("no kind: " + sentence)).getValue()).toList();
    }
}
