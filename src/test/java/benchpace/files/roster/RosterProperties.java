package benchpace.files.roster;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;

/** Rosters are pasted by people: nothing in them may make reading fail. */
class RosterProperties {

    @Property void no_text_makes_reading_fail(@ForAll @StringLength(max = 60)
            @Chars({'1', '2', 'a', ',', ';', '\t', '"', '\n', '\r', ' ', '\u0000', '\uD83D'}) String text) {
        Roster roster = Roster.read(text);

        assertThat(roster.places()).extracting(place -> place.seat().value()).doesNotHaveDuplicates();
    }
}
