package benchpace.web.screen.setup;

import benchpace.web.screen.shell.Shell;
import java.util.List;

/**
 * How a class is set up, to be filled in.
 *
 * @param classId empty for one that is not set up yet
 * @param plans   to choose from; the one a class has already bears an empty id
 * @param plan    the id of the chosen one
 * @param begins  by the room's clock, as a form field takes it; empty for now
 * @param ends    the time of day that was promised; empty for the plan's own
 * @param zone    whose clock that is
 * @param tag     names how it is set up now, as the interface for programs takes it; empty for a new one
 * @param carried what the page's script needs of plans and guests, as JSON
 */
public record SetupPage(Shell shell, String classId, List<Choice> plans, String plan, String name, String begins,
                        String ends, String zone, String place, int seats, String table, String numbering,
                        String tag, String carried) {
    /** What may be chosen, by what it is called in the form. */
    public record Choice(String id, String words) { }

    /** The shapes of tables. */
    public static final List<Choice> TABLES = List.of(new Choice("long-table", "One long table"),
            new Choice("two-tables", "Two tables"), new Choice("horseshoe", "Horseshoe"), new Choice("rows", "Rows"),
            new Choice("rounds", "Round tables of six"));

    /** Where seat 1 is, and which way the numbers run. */
    public static final List<Choice> NUMBERINGS = List.of(
            new Choice("clockwise-from-left", "from the left end, clockwise"),
            new Choice("anticlockwise-from-left", "from the left end, anticlockwise"),
            new Choice("clockwise-from-right", "from the right end, clockwise"),
            new Choice("anticlockwise-from-right", "from the right end, anticlockwise"));

    public SetupPage {
        plans = List.copyOf(plans);
    }

    public boolean isNew() {
        return classId.isEmpty();
    }
}
