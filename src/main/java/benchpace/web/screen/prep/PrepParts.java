package benchpace.web.screen.prep;

import benchpace.prep.sheet.PrepSheet;
import benchpace.web.screen.shell.Parts;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The live parts of the prep page, each worked out and drawn by itself, so that one that fails fails alone. */
public final class PrepParts {
    private PrepParts() { }

    /** @param render draws what is given with a template */
    public static void add(Parts parts, PrepGiven given, BiFunction<String, Object, String> render) {
        parts.add("prep-next", () -> render.apply("prep/next.jte", next(given)));
        sheet(parts, given, render, "lists", sheet -> ListsPanel.of(given, sheet));
        sheet(parts, given, render, "stock", sheet -> StockPanel.of(given, sheet));
        sheet(parts, given, render, "packing", sheet -> PackingPanel.of(given, sheet));
        sheet(parts, given, render, "wax", sheet -> WaxPanel.of(given, sheet));
        sheet(parts, given, render, "melters", sheet -> MeltersPanel.of(given, sheet));
        sheet(parts, given, render, "circuits", sheet -> CircuitsPanel.of(given, sheet));
        parts.add("prep-timetable", () -> render.apply("prep/timetable.jte", TimetablePanel.of(given)));
        sheet(parts, given, render, "checks", sheet -> ChecksPanel.of(given, sheet));
        parts.add("prep-safety", () -> render.apply("prep/safety.jte", SafetyCard.card()));
        parts.addQuietly("prep-ticks", () -> render.apply("instructor/carried.jte", given.ticks()));
    }

    private static void sheet(Parts parts, PrepGiven given, BiFunction<String, Object, String> render, String name,
                              Function<PrepSheet, Object> panel) {
        parts.add("prep-" + name, () -> render.apply("prep/" + name + ".jte", panel.apply(given.sheet().get())));
    }

    private static NextLine next(PrepGiven given) {
        PrepSheet sheet = given.sheet().get();
        return given.ofClass().map(c -> c.before() ? NextLine.of(sheet, given.ticked(), given.odds().get(),
                        c.startsAt(), given.now(), given.times()) : NextLine.NOTHING)
                .orElseGet(() -> NextLine.of(sheet, given.odds().get()));
    }
}
