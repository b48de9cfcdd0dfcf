package benchpace.web.screen;

import benchpace.board.view.ClassReport;
import benchpace.plan.Plan;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.report.ReportPage;
import benchpace.words.Times;
import java.util.Optional;

/** Reads what the report of a class that still goes on says of its candles. */
final class ReportReading {
    private final ReportPage page;
    private final Telling telling;

    ReportReading(ClassReport report, Telling telling) {
        Plan plan = report.view().plan();
        Times times = new Times(Evening.ZONE);
        this.page = ReportPage.of(report, LessonPanel.of(Optional.empty(), plan, times), EveryScreen.LEAD, times);
        this.telling = telling;
    }

    void read() {
        page.candles().forEach(row -> telling.each("likely ready about (.*)", row.ready(),
                m -> telling.tell("seat " + row.seat() + " is ready", m.group(1), "report, candles")));
        page.outcome().forEach(words -> telling.each("at seat (\\d+), is likely ready about ([^,]*),", words,
                m -> telling.tell("seat " + m.group(1) + " is ready", m.group(2), "report, outcome")));
    }
}
