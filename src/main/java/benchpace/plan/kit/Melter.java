package benchpace.plan.kit;

import benchpace.plan.AsTyped;
import benchpace.plan.Names;
import java.util.OptionalDouble;

/**
 * A pot that wax is melted in. A figure that is absent is asked for, and what hangs on it is not worked out.
 *
 * @param wax           the id of the wax it melts
 * @param capacityGrams of wax when full, above 0 and at most 1,000,000
 * @param heelGrams     what stays in it, below the tap or the ladle's reach; 0 or more
 * @param watts         of the heater, above 0 and at most 50,000
 * @param efficiency    share of the heat that reaches the wax, above 0 and at most 1
 * @param scentedIn     where the fragrance joins the wax
 * @param asTyped       of {@code capacityGrams}, {@code heelGrams} and {@code watts}
 */
public record Melter(String id, String name, String wax, OptionalDouble capacityGrams, double heelGrams,
                     OptionalDouble watts, OptionalDouble efficiency, ScentedIn scentedIn, AsTyped asTyped) {
    /** Where the fragrance joins the wax. */
    public enum ScentedIn { JUG, MELTER }

    public Melter {
        Names.id("the id of a melter", id);
        Names.required("the name of a melter", name, 60);
        Names.id("the wax of \"" + name + "\"", wax);
        capacityGrams.ifPresent(g -> Figures.within("the capacity of \"" + name + "\"", g, 1, 1_000_000, "g"));
        Figures.within("what stays in \"" + name + "\"", heelGrams, 0, 1_000_000, "g");
        watts.ifPresent(w -> Figures.within("the watts of \"" + name + "\"", w, 1, 50_000, "W"));
        efficiency.ifPresent(e -> Figures.within("the efficiency of \"" + name + "\"", e, 0.01, 1, "(a share)"));
        capacityGrams.ifPresent(g -> requireRoom(name, g, heelGrams));
    }

    /** With nothing kept as it was typed. */
    public Melter(String id, String name, String wax, OptionalDouble capacityGrams, double heelGrams,
                  OptionalDouble watts, OptionalDouble efficiency, ScentedIn scentedIn) {
        this(id, name, wax, capacityGrams, heelGrams, watts, efficiency, scentedIn, AsTyped.NONE);
    }

    /** The same as the shop's stop-watch knows it. */
    public Melter measured(double measuredEfficiency, double atWatts) {
        return new Melter(id, name, wax, capacityGrams, heelGrams, OptionalDouble.of(atWatts),
                OptionalDouble.of(measuredEfficiency), scentedIn, asTyped);
    }

    private static void requireRoom(String name, double capacityGrams, double heelGrams) {
        if (heelGrams >= capacityGrams) {
            throw new IllegalArgumentException("what stays in \"" + name + "\" must be less than it holds");
        }
    }
}
