package benchpace.plan;

import java.util.Optional;

/**
 * A vessel that a candle is poured into; a round one.
 *
 * @param id short stable name used in plans
 * @param name as people call it
 * @param material of wall and base
 * @param innerDiameterMillimetres 20 to 400
 * @param wallMillimetres thickness of wall and base, above 0 and at most 30
 * @param brimHeightMillimetres inner height to the brim, 10 to 500
 */
public record Vessel(String id, String name, Material material, double innerDiameterMillimetres,
        double wallMillimetres, double brimHeightMillimetres) {

    /** What a vessel is made of. */
    public enum Material { GLASS, TIN, CERAMIC }

    /** @throws IllegalArgumentException when a measure lies outside its range or a name is missing */
    public Vessel {
        if (id.isBlank() || name.isBlank() || material == null) {
            throw new IllegalArgumentException("a vessel needs an id, a name and a material");
        }
        within("inner diameter", innerDiameterMillimetres, 20, 400);
        within("wall", wallMillimetres, 0.05, 30);
        within("brim height", brimHeightMillimetres, 10, 500);
    }

    /** The same shape with all inner lengths times {@code factor}; empty if no vessel is so small or so large. */
    public Optional<Vessel> scaled(double factor) {
        double diameter = innerDiameterMillimetres * factor;
        double height = brimHeightMillimetres * factor;
        boolean exists = diameter >= 20 && diameter <= 400 && height >= 10 && height <= 500;
        return exists ? Optional.of(new Vessel(id, name, material, diameter, wallMillimetres, height))
                : Optional.empty();
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " outside " + least + ".." + most + " mm: " + value);
        }
    }
}
