package benchpace.files.roster;

import benchpace.files.Finding;
import benchpace.live.ClassEvent.Place;
import benchpace.plan.SeatNumber;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Who sits where, read from a {@link GuestList}. Guests for whom it names no seat take the seat of their place in the
 * list.
 *
 * @param places   in seat order; what could be read, if there are problems
 * @param problems what is wrong, by line
 */
public record Roster(List<Place> places, List<Finding> problems) {
    public Roster {
        places = List.copyOf(places);
        problems = List.copyOf(problems);
    }

    public boolean sound() {
        return problems.isEmpty();
    }

    /** Reads text from anywhere; nothing in it makes this throw. */
    public static Roster read(String text) {
        GuestList list = GuestList.read(text);
        List<Finding> problems = new ArrayList<>(list.problems());
        List<Place> places = new ArrayList<>();
        Set<SeatNumber> taken = new HashSet<>();
        list.guests().forEach(guest -> guest.seat().ifPresent(taken::add));
        for (Guest guest : list.guests()) {
            int next = places.size() + 1;
            if (guest.seat().isEmpty() && next > SeatNumber.MOST) {
                problems.add(new Finding("line " + guest.line(), "a seat number is 1 to " + SeatNumber.MOST + ", not "
                        + next));
            } else if (guest.seat().isEmpty() && !taken.add(new SeatNumber(next))) {
                problems.add(new Finding("line " + guest.line(), "names seat " + next + " a second time"));
            } else {
                places.add(new Place(guest.seat().orElseGet(() -> new SeatNumber(next)), guest.name(), guest.party(),
                        Optional.of(guest.candle()).filter(c -> !c.isEmpty()), guest.note()));
            }
        }
        places.sort(Comparator.comparing(Place::seat));
        return new Roster(places, problems);
    }
}
