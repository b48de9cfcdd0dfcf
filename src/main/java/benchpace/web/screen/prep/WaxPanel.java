package benchpace.web.screen.prep;

import benchpace.prep.Caution;
import benchpace.prep.Part;
import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.wax.CandleLine;
import benchpace.prep.wax.Load;
import benchpace.words.PrepFigures;
import benchpace.words.prep.LoadWords;
import benchpace.words.prep.PrepWords;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Wax and fragrance.
 *
 * @param total    what to melt and weigh, spills counted; empty if the plan names no candle
 * @param spill    the allowance in it; empty if there is none
 * @param problems why something is not worked out, or must not be mixed
 */
public record WaxPanel(List<Row> rows, String total, String fragrance, String spill, List<String> problems,
                       List<String> cautions, String editor) {

    /** A candle. @param load {@code allowed}, {@code over} or {@code unknown} */
    public record Row(String name, int seats, String each, String both, String load, String judged) { }

    static WaxPanel of(PrepGiven given, PrepSheet sheet) {
        double spill = given.occasion().plan().kit().spillPercent();
        return new WaxPanel(sheet.candles().stream().map(WaxPanel::row).toList(),
                sheet.totals().map(t -> PrepFigures.grams(t.waxGrams())).orElse(""),
                sheet.totals().filter(t -> t.fragranceGrams() > 0).map(t -> PrepFigures.grams(t.fragranceGrams()))
                        .orElse(""),
                spill > 0 ? PrepFigures.percent(spill) : "",
                Stream.concat(sheet.problems(Part.WAX).stream(), sheet.problems(Part.LOAD).stream())
                        .map(PrepWords::of).toList(),
                sheet.cautions().stream().filter(c -> c instanceof Caution.AtFlashPoint
                        || c instanceof Caution.OverTheBrim).map(PrepWords::of).toList(), given.editor());
    }

    private static Row row(CandleLine line) {
        return new Row(line.candle().name(), line.seats(), LoadWords.each(line), LoadWords.both(line),
                (line.scented() ? line.load() : Load.ALLOWED).name().toLowerCase(Locale.ROOT), LoadWords.judged(line));
    }
}
