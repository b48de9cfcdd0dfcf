package benchpace.web.screen.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.Picture;
import benchpace.plan.Vessel;
import benchpace.plan.Vessel.Material;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class DrawingTest {
    private static final Vessel TALL = new Vessel("tall", "tall", Material.TIN, 50, 1, 110);
    private static final Vessel WIDE = new Vessel("wide", "wide", Material.CERAMIC, 105, 6, 55);

    @Provide Arbitrary<Vessel> vessels() {
        return AnyVessel.vessel();
    }

    @Provide Arbitrary<Picture> pictures() {
        return Arbitraries.of(Picture.class);
    }

    @Property(tries = 600) void nothing_of_a_drawing_leaves_its_box_whatever_the_vessel(
            @ForAll("pictures") Picture picture, @ForAll("vessels") Vessel vessel) {
        Drawn drawn = Drawn.of(Drawing.of(picture, vessel));

        assertThat(drawn.marks).hasSizeGreaterThan(3).allSatisfy(mark -> {
            assertThat(mark.around().getMinX()).as(mark.classes()).isGreaterThanOrEqualTo(0);
            assertThat(mark.around().getMinY()).as(mark.classes()).isGreaterThanOrEqualTo(0);
            assertThat(mark.around().getMaxX()).as(mark.classes()).isLessThanOrEqualTo(320);
            assertThat(mark.around().getMaxY()).as(mark.classes()).isLessThanOrEqualTo(320);
        });
        assertThat(drawn.svg).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("E-");
    }

    @Example void every_picture_has_a_template_of_its_name_and_every_template_is_a_picture() throws Exception {
        Set<String> pictures = Stream.of(Picture.values()).map(Drawn::template)
                .collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> files = Files.list(Path.of("src/main/jte/drawing"))) {
            assertThat(files.map(f -> f.getFileName().toString().replace(".jte", ""))
                    .filter(name -> !name.equals("picture"))).containsExactlyInAnyOrderElementsOf(pictures);
        }
        assertThat(Stream.of(Picture.values()).map(p -> svg(Drawing.of(p)))).doesNotHaveDuplicates();
    }

    @Example void a_vessel_is_drawn_where_the_picture_says_so_and_nowhere_else() {
        for (Picture picture : Picture.values()) {
            assertThat(svg(Drawing.of(picture, TALL)).equals(svg(Drawing.of(picture, WIDE))))
                    .as(picture.name()).isEqualTo(!picture.showsVessel());
        }
    }

    @Example void every_drawing_bears_an_accent_or_the_heart_of_a_candle_and_no_colour_of_its_own() throws Exception {
        String sheet = Files.readString(Path.of("static/css/drawing.css"));
        for (Picture picture : Picture.values()) {
            Drawn drawn = Drawn.of(Drawing.of(picture));
            assertThat(drawn.marks.stream().map(Drawn.Mark::classes).flatMap(c -> Stream.of(c.split(" "))).distinct())
                    .as(picture.name())
                    .anyMatch(c -> c.endsWith("-lead") || c.endsWith("-mark") || c.equals("f-deep"))
                    .allSatisfy(c -> assertThat(sheet).contains("." + c + " {"));
            assertThat(drawn.svg).doesNotContain("#").doesNotContain("fill=\"").doesNotContain("style=")
                    .contains("aria-hidden=\"true\"");
        }
    }

    @Example void no_two_drawings_clash_on_a_page_because_none_has_an_id() {
        Pattern id = Pattern.compile("\\bid=|url\\(");
        assertThat(List.of(Picture.values())).noneMatch(p -> id.matcher(svg(Drawing.of(p))).find());
    }

    private static String svg(Drawing drawing) {
        return Drawn.of(drawing).svg;
    }
}
