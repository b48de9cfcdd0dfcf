package benchpace.files.roster;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Finding;
import benchpace.live.ClassEvent.Place;
import benchpace.plan.SeatNumber;
import java.util.Arrays;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Rosters from CSV; quoting as in RFC 4180, section 2. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RosterTest {
    private static void assertPlaces(String text, String... seatsAndNames) {
        Roster roster = Roster.read(text);
        assertThat(roster.problems()).isEmpty();
        assertThat(roster.places()).containsExactlyElementsOf(Arrays.stream(seatsAndNames).map(s -> new Place(
                new SeatNumber(Integer.parseInt(s.split(":", -1)[0])), s.split(":", -1)[1])).toList());
    }

    private static void assertProblems(String text, String... problems) {
        assertThat(Roster.read(text).problems().stream().map(Finding::toString)).containsExactly(problems);
    }

    @Test void seats_and_names_are_read_with_and_without_a_heading() {
        assertPlaces("seat,name\n1,Ida\n2,\n", "1:Ida", "2:");
        assertPlaces("\uFEFFSeat,Name\r\n3, Bo \r\n\r\n1,Ida", "1:Ida", "3:Bo");
        assertPlaces("2,Noor", "2:Noor");
    }

    @Test void pasted_text_may_use_tabs_or_semicolons() {
        assertPlaces("1\tIda\n2\tvan Dyk, Bo\n", "1:Ida", "2:van Dyk, Bo");
        assertPlaces("seat;name\n1;Ida\n", "1:Ida");
    }

    @Test void quotes_are_those_of_the_standard() {
        assertPlaces("1,\"Ida, called \"\"Id\"\"\"\n", "1:Ida, called \"Id\"");
    }

    @Test void names_alone_are_taken_in_seat_order() {
        assertPlaces("name\nIda\nBo\nNoor", "1:Ida", "2:Bo", "3:Noor");
    }

    @Test void an_empty_roster_is_a_roster() {
        assertPlaces("");
        assertPlaces("seat,name\n");
    }

    @Test void each_problem_names_its_line() {
        assertProblems("seat,name\n1,Ida\n\n1,Bo\nx,Noor\n61,Zo\n4," + "y".repeat(41) + "\n5,a,b\n6,a\u0007b",
                "line 4: names seat 1 a second time",
                "line 5: begins with \"x\", not with the number of a seat",
                "line 6: a seat number is 1 to 60, not 61",
                "line 7: the name is longer than 40 characters",
                "line 8: has more than a seat and a name",
                "line 9: the name holds a character that cannot be shown");
    }

    @Test void a_quote_left_open_is_told_of() {
        assertProblems("1,\"Ida\n2,Bo\n",
                "is not sound CSV: a quote is opened and not closed, or stands in the middle of a field");
    }
}
