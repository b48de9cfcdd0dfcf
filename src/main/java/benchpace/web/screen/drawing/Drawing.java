package benchpace.web.screen.drawing;

import benchpace.plan.Picture;
import benchpace.plan.Vessel;
import benchpace.plan.Vessel.Material;

/**
 * A drawing as {@code drawing/picture.jte} makes it: decoration beside words that say the same, so unseen by those who
 * listen to a page.
 *
 * @param vessel stands in it where {@link Picture#showsVessel}; elsewhere unused
 */
public record Drawing(Picture picture, Vessel vessel) {
    /** Stands where no plan says which: of about the common proportions of a candle glass. */
    private static final Vessel USUAL = new Vessel("usual", "a glass", Material.GLASS, 64, 3, 80);

    public static Drawing of(Picture picture) {
        return new Drawing(picture, USUAL);
    }
}
