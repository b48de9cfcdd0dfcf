package benchpace.web.screen.prep;

import benchpace.prep.Caution;
import benchpace.prep.Part;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.sheet.PrepSheet;
import benchpace.words.NextWords;
import benchpace.words.prep.MelterWords;
import benchpace.words.prep.PrepWords;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * The melters.
 *
 * @param basis     what their times rest on; empty if none is told
 * @param stopwatch where what a melt took is worked out; empty for who may not
 */
public record MeltersPanel(List<Row> rows, String basis, List<String> problems, List<String> cautions,
                           String editor, String stopwatch) {

    /**
     * One.
     *
     * @param when  to switch it on; empty if that is not known
     * @param timed whether a stop-watch can correct it: what it melts is known
     * @param grams that the first fill has, for the form of the stop-watch
     * @param watts as the plan says; empty if it does not
     */
    public record Row(String id, String name, String when, List<String> facts, boolean timed, String grams,
                      String watts) { }

    static MeltersPanel of(PrepGiven given, PrepSheet sheet) {
        List<Row> rows = sheet.melters().stream().map(line -> row(given, line)).toList();
        return new MeltersPanel(rows, sheet.firstOn().isPresent() ? MelterWords.BASIS : "",
                sheet.problems(Part.MELTER).stream().map(PrepWords::of).toList(),
                sheet.cautions().stream().filter(c -> c instanceof Caution.OneWaxInSeveral
                        || c instanceof Caution.PouringStops).map(PrepWords::of).toList(), given.editor(),
                given.book().filter(b -> given.viewer().instructor())
                        .map(b -> "/api/plans/" + b.planId() + "/prep/melters").orElse(""));
    }

    private static Row row(PrepGiven given, MelterLine line) {
        return new Row(line.melter().id(), line.melter().name(), when(given, line), MelterWords.of(line),
                line.melting().isPresent(), line.firstFillGrams().stream().mapToObj(MeltersPanel::plain).findFirst()
                .orElse(""), line.melter().watts().stream().mapToObj(MeltersPanel::plain).findFirst().orElse(""));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private static String when(PrepGiven given, MelterLine line) {
        if (given.ofClass().isEmpty()) {
            return "";
        }
        Instant start = given.ofClass().get().startsAt();
        return line.switchOnAt(start).map(at -> NextWords.on(at, start, given.times())).orElse("");
    }
}
