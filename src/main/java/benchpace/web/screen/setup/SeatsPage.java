package benchpace.web.screen.setup;

import benchpace.web.screen.shell.Shell;
import java.util.List;

/**
 * The seats of a class that has begun, to be corrected.
 *
 * @param next    the number that a further seat would have; 0 if there can be none
 * @param candles what a further seat may make; empty if there is no choice
 */
public record SeatsPage(Shell shell, String classId, String name, boolean closed, List<Row> rows, int next,
                        List<SetupPage.Choice> candles) {
    /** A seat. @param began a candle was begun there by somebody who is still here */
    public record Row(int seat, String name, String party, String note, boolean began) { }

    public SeatsPage {
        rows = List.copyOf(rows);
        candles = List.copyOf(candles);
    }
}
