package benchpace.web.screen.shelf;

import benchpace.plan.Picture;
import benchpace.plan.Studio;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.ShelfTag;
import java.util.List;

/**
 * Tags to print.
 *
 * @param ids    of the candles, as the address names them
 * @param single one a page, for a label printer, rather than several a sheet
 */
public record TagsPage(Shell shell, List<ShelfTag> tags, String ids, boolean single) {
    public static TagsPage of(List<ShelfTag> tags, String ids, boolean single, Studio studio,
                              Viewer viewer) {
        return new TagsPage(new Shell("Tags", "tags", List.of(), "", "", "UTC", viewer.role().token(), "")
                .at(studio), tags, ids, single);
    }

    /** What the tag is tied to. */
    public Drawing drawing() {
        return Drawing.of(Picture.WRAP);
    }
}
