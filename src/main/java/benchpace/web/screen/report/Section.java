package benchpace.web.screen.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A section of a look back, for whoever would go straight there.
 *
 * @param id      of its heading
 * @param heading as it stands there
 */
public record Section(String id, String heading) {

    /** Those of a page, in its order. */
    static List<Section> of(ReportPage page) {
        Found found = new Found();
        found.add(true, "held-title", "What held the class");
        found.add(true, "lines-title", "Pace lines");
        found.add(!page.way().isEmpty(), "way-title", "The way to the last candle");
        found.add(!page.candles().isEmpty(), "candles-title", "The candles");
        found.add(!page.steps().isEmpty(), "steps-title", "Each step against the plan");
        found.add(true, "flags-title", "Flags");
        found.add(!page.waited().rows().isEmpty(), "wait-title", "The wait");
        found.add(!page.cured().rows().isEmpty(), "cure-title", "Said at the pour, and judged");
        found.add(!page.shelf().isEmpty(), "shelf-title", "On the shelf");
        found.add(!page.notes().isEmpty(), "notes-title", "Notes");
        found.add(true, "what-if-title", "What if \u2026");
        found.add(!page.lesson().rows().isEmpty(), "lesson-title", "What past classes teach about the steps");
        found.add(true, "files-title", "As a file");
        found.add(true, "guests-title", "The guests' names");
        return found.sections;
    }

    private static final class Found {
        private final List<Section> sections = new ArrayList<>();

        void add(boolean there, String id, String heading) {
            if (there) {
                sections.add(new Section(id, heading));
            }
        }
    }
}
