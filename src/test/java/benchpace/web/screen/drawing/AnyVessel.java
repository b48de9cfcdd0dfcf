package benchpace.web.screen.drawing;

import benchpace.plan.Vessel;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Every vessel that a plan may name, from a thimble to a bucket. */
final class AnyVessel {
    private AnyVessel() { }

    static Arbitrary<Vessel> vessel() {
        return Combinators.combine(Arbitraries.of(Vessel.Material.class), Arbitraries.doubles().between(20, 400),
                Arbitraries.doubles().between(0.05, 30), Arbitraries.doubles().between(10, 500))
                .as((material, diameter, wall, height) -> new Vessel("any", "any", material, diameter, wall, height));
    }
}
