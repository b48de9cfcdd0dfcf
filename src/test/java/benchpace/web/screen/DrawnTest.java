package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DrawnTest {
    private record Tile(int seat, String words) { }

    private final List<Object> made = new ArrayList<>();
    private final Drawn drawn = new Drawn(20);

    private String draw(String template, Tile tile) {
        return drawn.of(template, tile, (of, shown) -> {
            made.add(shown);
            return of + ":" + ((Tile) shown).words();
        });
    }

    @Test void what_reads_alike_is_drawn_once() {
        assertThat(draw("t", new Tile(1, "wicks"))).isEqualTo("t:wicks");
        assertThat(draw("t", new Tile(1, "wicks"))).isEqualTo("t:wicks");

        assertThat(made).hasSize(1);
    }

    @Test void another_template_or_anything_else_to_show_is_drawn_anew() {
        draw("t", new Tile(1, "wicks"));

        assertThat(draw("u", new Tile(1, "wicks"))).isEqualTo("u:wicks");
        assertThat(draw("t", new Tile(1, "pour"))).isEqualTo("t:pour");
        assertThat(made).hasSize(3);
    }

    @Test void what_was_not_asked_for_longest_is_let_go_when_there_is_too_much() {
        draw("t", new Tile(1, "12345678"));
        draw("t", new Tile(2, "12345678"));
        draw("t", new Tile(1, "12345678"));
        draw("t", new Tile(3, "12345678"));
        made.clear();

        draw("t", new Tile(1, "12345678"));
        draw("t", new Tile(2, "12345678"));

        assertThat(made).containsExactly(new Tile(2, "12345678"));
    }

    @Test void what_is_longer_than_all_that_is_kept_is_drawn_all_the_same() {
        assertThat(draw("t", new Tile(1, "a long text, longer than all"))).endsWith("longer than all");
        assertThat(draw("t", new Tile(1, "a long text, longer than all"))).endsWith("longer than all");

        assertThat(made).hasSize(2);
    }
}
