package benchpace.web.screen.shelf;

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
    public static TagsPage of(List<ShelfTag> tags, String ids, boolean single, Viewer viewer) {
        return new TagsPage(new Shell("Tags", "tags", List.of(), "", "", "UTC", viewer.role().token(), ""), tags, ids,
                single);
    }
}
