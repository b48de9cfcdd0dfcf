package benchpace.web.screen;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the start page shows.
 *
 * @param role     what this device is paired for; empty if it is not
 * @param initials a paired helper's; may be empty
 * @param classes  in the order to show them, the closed ones last
 * @param plans    to set up a class from; only shown to the instructor
 * @param join     the address that phones on the same network can reach
 * @param helpers  the same for helpers; only given to the instructor
 * @param notice   one sentence to show at the top; may be empty
 */
public record StartView(Optional<Role> role, String initials, List<ClassRow> classes, List<PlanChoice> plans,
                        Optional<Link> join, Optional<Link> helpers, String notice) {

    public static final String NOT_BEGUN = "not begun";
    public static final String CLOSED = "closed";
    /** So many closed classes may stand among the others. */
    private static final int FEW = 3;

    /** @param status in words: {@link #NOT_BEGUN}, "running", {@link #CLOSED} */
    public record ClassRow(String id, String name, String place, Instant startsAt, ZoneId zone, String status) {
        public String when() {
            return new Times(zone).day(startsAt);
        }

        public boolean closed() {
            return status.equals(CLOSED);
        }

        private int rank() {
            return closed() ? 2 : status.equals(NOT_BEGUN) ? 1 : 0;
        }

        private Duration from(Instant now) {
            return Duration.between(startsAt, now).abs();
        }
    }

    public record PlanChoice(String id, String name, int usualSeats) { }

    /** An address and its QR code. @param qr true where a module is dark; empty for none */
    public record Link(String url, boolean[][] qr) {

        /** The code as the path of an SVG whose unit is one module, the quiet zone of four not included. */
        public String path() {
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < qr.length; y++) {
                for (int x = 0; x < qr[y].length; x++) {
                    if (qr[y][x]) {
                        path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                    }
                }
            }
            return path.toString();
        }

        public String viewBox() {
            int side = qr.length + 8;
            return "-4 -4 " + side + " " + side;
        }

        public boolean hasCode() {
            return qr.length > 0;
        }
    }

    public StartView {
        classes = List.copyOf(classes);
        plans = List.copyOf(plans);
    }

    /** What runs comes first, then what is to come, then what is over, each from the nearest on. */
    public static Comparator<ClassRow> order(Instant now) {
        return Comparator.comparingInt(ClassRow::rank).thenComparing(row -> row.from(now));
    }

    /** The classes to be seen at once. */
    public List<ClassRow> shown() {
        return classes.stream().filter(row -> !row.closed() || folded().isEmpty()).toList();
    }

    /** The closed classes, once they are so many that they would hide the others. */
    public List<ClassRow> folded() {
        List<ClassRow> closed = classes.stream().filter(ClassRow::closed).toList();
        return closed.size() > FEW ? closed : List.of();
    }

    public boolean instructor() {
        return role.filter(Role.INSTRUCTOR::equals).isPresent();
    }

    public boolean paired() {
        return role.filter(r -> r != Role.GUEST).isPresent();
    }
}
