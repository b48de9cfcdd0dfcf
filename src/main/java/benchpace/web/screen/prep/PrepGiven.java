package benchpace.web.screen.prep;

import benchpace.board.prep.Occasion;
import benchpace.board.prep.Odds;
import benchpace.board.prep.Ticked;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.sheet.PrepSheet;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the prep page is drawn from. What has to be worked out is asked for part by part, so that each that fails fails
 * alone.
 *
 * @param id       of the class or of the plan
 * @param name     of it
 * @param ofClass  the class; empty for the page of a plan
 * @param ticks    JSON of what is ticked off, as the interface for programs tells it; empty for a plan
 * @param book     where its plan stands in the book of plans, if it does
 * @param answer   why what was asked for is not shown; empty if it is
 */
public record PrepGiven(String id, String name, Occasion occasion, Supplier<PrepSheet> sheet, Supplier<Odds> odds,
                        Optional<OfClass> ofClass, Ticked ticked, String ticks, LabelRegion region, Optional<Book> book,
                        String answer, Instant now, Times times, Viewer viewer) {

    /** What only a class has. @param before whether it has not begun */
    public record OfClass(Instant startsAt, boolean before) { }

    /** A plan in the book. @param starter it comes with the program: it can only be copied */
    public record Book(String planId, boolean starter) { }

    /** Where the plan's figures are typed in; empty for who may not. */
    String editor() {
        return book.filter(b -> viewer.instructor()).map(b -> "/plans/" + b.planId()).orElse("");
    }

    boolean live() {
        return ofClass.isPresent();
    }
}
