package benchpace.web.screen.shell;

import benchpace.board.attempt.Faults;
import gg.jte.Content;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The live parts of one screen of a class, rendered: what its page shows at first and what its stream sends later are
 * these. A part that cannot be rendered says so in its place, is noted once in the log, and leaves the others alone.
 */
public final class Parts {
    private static final Logger LOG = System.getLogger(Parts.class.getName());
    /** What stands in the place of a part; no paragraph, as some parts are inside of buttons. */
    private static final String NOT_NOW = "<span class=\"hint\">This part cannot be shown just now.</span>";

    private final String classId;
    private final Faults faults;
    private final Map<String, String> html = new LinkedHashMap<>();

    public Parts(String classId, Faults faults) {
        this.classId = classId;
        this.faults = faults;
    }

    /** A part that people read. */
    public void add(String name, Supplier<String> rendered) {
        add(name, rendered, NOT_NOW);
    }

    /** A part that only scripts and people with a certain right find something in: nothing stands in for it. */
    public void addQuietly(String name, Supplier<String> rendered) {
        add(name, rendered, "");
    }

    private void add(String name, Supplier<String> rendered, String otherwise) {
        try {
            html.put(name, rendered.get());
        } catch (RuntimeException | StackOverflowError e) {
            if (faults.isNew(classId + " " + name, e)) {
                LOG.log(Level.ERROR, "class " + classId + ": the part " + name + " of a page cannot be shown", e);
            }
            html.put(name, otherwise);
        }
    }

    /** Name of the event to the HTML that replaces the inside of the part, in the page's order. */
    public Map<String, String> html() {
        return new LinkedHashMap<>(html);
    }

    /** One of them, for its place on the page. */
    public Content of(String name) {
        String part = html.get(name);
        if (part == null) {
            throw new IllegalArgumentException("no part is called " + name);
        }
        return output -> output.writeContent(part);
    }
}
