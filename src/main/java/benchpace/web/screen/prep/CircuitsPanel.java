package benchpace.web.screen.prep;

import benchpace.prep.Caution;
import benchpace.prep.Part;
import benchpace.prep.circuit.CircuitLine;
import benchpace.prep.circuit.Verdict;
import benchpace.prep.sheet.PrepSheet;
import benchpace.words.prep.CircuitWords;
import benchpace.words.prep.PrepWords;
import java.util.List;

/** What is plugged in where. */
public record CircuitsPanel(List<Row> rows, List<String> problems, List<String> cautions, List<String> always,
                            String editor) {

    /**
     * A circuit.
     *
     * @param verdict  "fits", "close" or "over"; empty if it cannot be judged
     * @param facts    volts, amperes and rule
     * @param advice   what would help, each worked out anew
     */
    public record Row(String name, String verdict, boolean over, String facts, List<String> plugged,
                      List<String> reasons, List<String> advice) { }

    static CircuitsPanel of(PrepGiven given, PrepSheet sheet) {
        return new CircuitsPanel(sheet.circuits().stream().map(CircuitsPanel::row).toList(),
                sheet.problems(Part.CIRCUIT).stream().map(PrepWords::of).toList(),
                sheet.cautions().stream().filter(c -> c instanceof Caution.OnLonger
                        || c instanceof Caution.PluggedInNowhere).map(PrepWords::of).toList(), CircuitWords.ALWAYS,
                given.editor());
    }

    private static Row row(CircuitLine line) {
        return new Row(line.circuit().name(), line.verdict().map(CircuitWords::verdict).orElse(""),
                line.verdict().filter(Verdict.OVER::equals).isPresent(), CircuitWords.circuit(line.circuit()),
                CircuitWords.plugged(line), CircuitWords.reasons(line),
                CircuitWords.advice(line));
    }

    public boolean isEmpty() {
        return rows.isEmpty() && problems.isEmpty();
    }
}
