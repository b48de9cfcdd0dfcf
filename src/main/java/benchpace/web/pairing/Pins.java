package benchpace.web.pairing;

import benchpace.web.screen.shell.Role;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The PINs in force. They are in memory only: each start of the board draws new ones, but for one that was chosen. */
public final class Pins {
    private final Optional<String> chosen;
    private String instructor;
    private String helper;
    private String wall;

    private Pins(Optional<String> chosen, String instructor, String helper, String wall) {
        this.chosen = chosen;
        this.instructor = instructor;
        this.helper = helper;
        this.wall = wall;
    }

    /** @param chosen the instructor's, if it is to stay as it is */
    public static Pins drawn(Optional<String> chosen) {
        Pins pins = new Pins(chosen, "", "", "");
        pins.drawAnew();
        return pins;
    }

    public static Pins of(String instructor, String helper, String wall) {
        return new Pins(Optional.of(instructor), instructor, helper, wall);
    }

    /** No two are alike, so that none opens more than it should. */
    public synchronized void drawAnew() {
        Set<String> taken = new TreeSet<>(List.of(instructor, helper, wall)); // nor is one like those of before
        instructor = chosen.orElseGet(() -> fresh(taken));
        taken.add(instructor);
        helper = fresh(taken);
        wall = fresh(taken);
    }

    private static String fresh(Set<String> taken) {
        String pin = Secrets.pin();
        while (!taken.add(pin)) {
            pin = Secrets.pin();
        }
        return pin;
    }

    /** Whether the instructor's stays as it is. */
    public boolean isChosen() {
        return chosen.isPresent();
    }

    public synchronized String instructor() {
        return instructor;
    }

    public synchronized String helper() {
        return helper;
    }

    public synchronized String wall() {
        return wall;
    }

    public synchronized Optional<Role> whose(String pin) {
        return Secrets.same(instructor, pin) ? Optional.of(Role.INSTRUCTOR)
                : Secrets.same(helper, pin) ? Optional.of(Role.HELPER)
                : Secrets.same(wall, pin) ? Optional.of(Role.WALL) : Optional.empty();
    }
}
