package benchpace.web.screen.drawing;

import benchpace.plan.Picture;
import benchpace.plan.Vessel;
import benchpace.plan.Vessel.Material;
import java.util.List;

/** Every picture with a glass, a tall tin and a wide bowl, on one page to be looked at. */
public final class DrawingSheet {
    private static final List<Vessel> VESSELS = List.of(new Vessel("glass", "glass", Material.GLASS, 64, 3, 80),
            new Vessel("tall", "tall tin", Material.TIN, 50, 0.6, 110),
            new Vessel("wide", "wide bowl", Material.CERAMIC, 105, 6, 55));

    private static final int COLUMNS = 9;

    private DrawingSheet() { }

    public static String page() {
        StringBuilder page = new StringBuilder("<!doctype html><html lang=\"en\"><head><title>Drawings</title>");
        for (String sheet : List.of("tokens", "base", "drawing")) {
            page.append("<link rel=\"stylesheet\" href=\"/static/css/").append(sheet).append(".css\">");
        }
        page.append("</head><body><main><h1>Drawings</h1>");
        for (Vessel vessel : VESSELS) {
            page.append("<h2>").append(vessel.name()).append("</h2><table width=\"100%\"><tr>");
            for (Picture picture : Picture.values()) {
                page.append(picture.ordinal() % COLUMNS == 0 ? "</tr><tr>" : "").append("<td width=\"11%\">")
                        .append(Drawn.of(Drawing.of(picture, vessel)).svg).append("</td>");
            }
            page.append("</tr></table>");
        }
        return page.append("</main></body></html>").toString();
    }
}
