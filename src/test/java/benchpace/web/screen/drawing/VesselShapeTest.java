package benchpace.web.screen.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.Vessel;
import benchpace.plan.Vessel.Material;
import benchpace.web.screen.drawing.VesselShape.Box;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class VesselShapeTest {
    private static final Box BOX = new Box(60, 40, 200, 240);
    private static final double TENTH = 0.051;

    @Provide Arbitrary<Vessel> vessels() {
        return AnyVessel.vessel();
    }

    private static Vessel vessel(Material material) {
        return new Vessel("any", "any", material, 64, 3, 80);
    }

    @Property void it_is_as_wide_for_its_height_as_the_vessel_is(@ForAll("vessels") Vessel vessel) {
        VesselShape shape = VesselShape.within(BOX, vessel, 8);
        assertThat(shape.width() / shape.depth()).isCloseTo(
                vessel.innerDiameterMillimetres() / vessel.brimHeightMillimetres(), within(1e-6));
        assertThat(shape.width()).isCloseTo(vessel.innerDiameterMillimetres() * shape.scale(), within(1e-9));
    }

    @Property void its_strokes_stay_within_the_box_and_reach_its_edge(@ForAll("vessels") Vessel vessel) {
        VesselShape shape = VesselShape.within(BOX, vessel, 8);
        double half = shape.line() / 2;
        List<double[]> points = new DrawnPath(shape.wall() + shape.rim()).points;

        assertThat(points).allSatisfy(p -> {
            assertThat(p[0]).isBetween(BOX.left() + half - TENTH, BOX.left() + BOX.width() - half + TENTH);
            assertThat(p[1]).isBetween(BOX.top() + half - TENTH, BOX.top() + BOX.height() - half + TENTH);
        });
        double across = points.stream().mapToDouble(p -> p[0]).max().orElseThrow()
                - points.stream().mapToDouble(p -> p[0]).min().orElseThrow() + shape.line();
        double upward = points.stream().mapToDouble(p -> p[1]).max().orElseThrow()
                - points.stream().mapToDouble(p -> p[1]).min().orElseThrow() + shape.line();
        assertThat(Math.max(across / BOX.width(), upward / BOX.height())).isCloseTo(1, within(1e-2));
    }

    @Property void what_is_in_it_stands_on_its_base_up_to_its_level_and_between_its_walls(
            @ForAll("vessels") Vessel vessel, @ForAll @DoubleRange(max = 1) double share) {
        VesselShape shape = VesselShape.within(BOX, vessel, 8);
        String path = shape.filledTo(share);

        assertThat(path).endsWith("Z");
        List<double[]> points = new DrawnPath(path).points;
        assertThat(points.stream().mapToDouble(p -> p[1]).max().orElseThrow()).isCloseTo(shape.base(), within(TENTH));
        assertThat(points.stream().mapToDouble(p -> p[1]).min().orElseThrow())
                .isCloseTo(shape.level(share), within(TENTH));
        assertThat(points).allSatisfy(p ->
                assertThat(p[0]).isBetween(shape.left() - TENTH, shape.right() + TENTH));
        double atLevel = shape.halfWidth(share * vessel.brimHeightMillimetres());
        assertThat(points.get(0)[0]).isCloseTo(shape.centre() - atLevel, within(TENTH));
    }

    @Property void places_lie_between_the_walls_at_their_height(@ForAll("vessels") Vessel vessel,
            @ForAll @DoubleRange(min = -1, max = 1) double share, @ForAll @DoubleRange(max = 1) double up) {
        VesselShape shape = VesselShape.within(BOX, vessel, 8);
        double above = up * vessel.brimHeightMillimetres();

        assertThat(shape.x(share, above)).isBetween(shape.left() - 1e-9, shape.right() + 1e-9);
        assertThat(shape.x(-share, above) + shape.x(share, above)).isCloseTo(2 * shape.centre(), within(1e-9));
        assertThat(shape.y(above)).isBetween(shape.brim() - 1e-9, shape.base() + 1e-9);
        assertThat(shape.halfWidth(above)).isLessThanOrEqualTo(shape.width() / 2 + 1e-9).isPositive();
    }

    @Example void the_models_corners_are_the_drawings() {
        VesselShape shape = VesselShape.within(BOX, vessel(Material.GLASS), 8);
        assertThat(shape.y(0)).isEqualTo(shape.base()).isEqualTo(BOX.top() + BOX.height() - 8);
        assertThat(shape.y(80)).isCloseTo(shape.brim(), within(1e-9));
        assertThat(shape.x(-1, 80)).isCloseTo(shape.left(), within(1e-9));
        assertThat(shape.x(1, 60)).isCloseTo(shape.right(), within(1e-9));
        assertThat(shape.x(0, 10)).isEqualTo(shape.centre()).isEqualTo(160);
        assertThat(shape.filled(-3)).isEqualTo(shape.filled(0));
        assertThat(shape.filled(90)).isEqualTo(shape.inner());
    }

    @Example void the_wall_lies_around_what_is_inside_and_takes_nothing_of_it() {
        VesselShape shape = VesselShape.within(BOX, vessel(Material.GLASS), 8);
        List<double[]> wall = new DrawnPath(shape.wall()).points;
        assertThat(wall.get(0)[0]).isCloseTo(shape.left() - 4, within(TENTH));
        assertThat(wall.get(wall.size() - 1)[0]).isCloseTo(shape.right() + 4, within(TENTH));
        assertThat(wall.get(2)[1]).as("the base").isCloseTo(shape.base() + 4, within(TENTH));
        assertThat(wall.get(0)[1]).isCloseTo(shape.brim(), within(TENTH));
    }

    @Example void a_tin_has_a_rolled_rim_a_glass_is_straight_and_ceramic_tapers() {
        VesselShape glass = VesselShape.within(BOX, vessel(Material.GLASS), 8);
        VesselShape tin = VesselShape.within(BOX, vessel(Material.TIN), 8);
        VesselShape cup = VesselShape.within(BOX, vessel(Material.CERAMIC), 8);

        assertThat(List.of(glass.rim(), cup.rim())).containsOnly("");
        assertThat(new DrawnPath(tin.rim()).points).hasSize(4)
                .allSatisfy(p -> assertThat(p[1]).isCloseTo(tin.brim(), within(TENTH)))
                .anySatisfy(p -> assertThat(p[0]).isLessThan(tin.left() - 8))
                .anySatisfy(p -> assertThat(p[0]).isGreaterThan(tin.right() + 8));
        assertThat(glass.halfWidth(80)).isEqualTo(glass.halfWidth(40));
        assertThat(tin.halfWidth(80)).isEqualTo(tin.halfWidth(20));
        assertThat(cup.halfWidth(80)).isGreaterThan(cup.halfWidth(60));
        assertThat(cup.halfWidth(60)).isGreaterThan(cup.halfWidth(5));
        assertThat(glass.halfWidth(2)).as("its base is rounded").isLessThan(tin.halfWidth(2) - 1);
    }

    @Example void a_box_that_its_strokes_fill_is_refused() {
        assertThatThrownBy(() -> VesselShape.within(new Box(0, 0, 16, 100), vessel(Material.GLASS), 8))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("no room");
    }
}
