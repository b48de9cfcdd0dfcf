package benchpace.web.screen.start;

import benchpace.web.screen.prep.NextLine;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Shell;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the start page shows.
 *
 * @param role     what this device is paired for; empty if it is not
 * @param initials a paired helper's; may be empty
 * @param classes  in the order to show them
 * @param plans    to set up a class from; only shown to the instructor
 * @param join     the address that phones on the same network can reach
 * @param byName   the same by the board's name, where the network knows it
 * @param helpers  what lets helpers in; only given to the instructor
 * @param notice   one sentence to show at the top; may be empty
 * @param guesses  what strangers guessed at of late, in words; empty if nothing, and to devices that are not paired
 * @param clocks   what the instructor should decide about the clocks
 * @param next     the class that is prepared for; empty if none is to come, and to devices that are not paired
 * @param now      the board's time, in the room's zone
 * @param newcomer nobody has set up a class of their own yet
 */
public record StartView(Optional<Role> role, String initials, List<ClassRow> classes, List<PlanChoice> plans,
                        Link join, Optional<String> byName, Optional<Joining> helpers, String notice, String guesses,
                        ClockLine clocks, Optional<NextClass> next, ZonedDateTime now, boolean newcomer) {

    /** While the clocks agree. */
    public StartView(Optional<Role> role, String initials, List<ClassRow> classes, List<PlanChoice> plans, Link join,
                     Optional<String> byName, Optional<Joining> helpers, String notice, String guesses) {
        this(role, initials, classes, plans, join, byName, helpers, notice, guesses, ClockLine.NOTHING,
                Optional.empty(), Instant.EPOCH.atZone(ZoneOffset.UTC), false);
    }

    public static final String NOT_BEGUN = "not begun";
    public static final String LEFT_OPEN = "left open";
    public static final String CLOSED = "closed";
    /** How far it is cannot be told just now. */
    public static final String UNTOLD = "cannot be shown as it is just now";
    /** So many closed classes may stand among the others. */
    private static final int FEW = 3;
    /** So many of them are listed at most; the history has all. */
    private static final int FOLDED = 10;

    /** What the classes are grouped by, in their order on the page. */
    public enum Group {
        RUNNING("Running now"), TODAY("Next, today"), TO_COME("To come"), LEFT_OVER("Not begun, or left open"),
        OVER("Over");

        private final String heading;

        Group(String heading) {
            this.heading = heading;
        }

        public String heading() {
            return heading;
        }
    }

    /**
     * A class.
     *
     * @param now    when it is looked at
     * @param status in words: {@link #NOT_BEGUN}, "running", {@link #LEFT_OPEN}, {@link #CLOSED}
     * @param home   when everyone goes home, as the table says it; empty where that is not told
     * @param clocks that its times are later than now; empty if they are not
     */
    public record ClassRow(String id, String name, String place, Instant startsAt, Instant now, ZoneId zone,
                           String status, String home, String clocks) {
        public ClassRow(String id, String name, String place, Instant startsAt, Instant now, ZoneId zone,
                        String status) {
            this(id, name, place, startsAt, now, zone, status, "", "");
        }

        public ClassRow withHome(String words) {
            return new ClassRow(id, name, place, startsAt, now, zone, status, words, clocks);
        }

        public ClassRow withClocks(String words) {
            return new ClassRow(id, name, place, startsAt, now, zone, status, home, words);
        }

        /** It runs, or will today: what of it is asked for at a glance. */
        public boolean isNear() {
            return group() == Group.RUNNING || group() == Group.TODAY;
        }

        /** "Today, 18:30". */
        public String when() {
            return new Times(zone).dayFrom(startsAt, now);
        }

        /** Of that the time, which stands large. */
        public String clock() {
            return new Times(zone).clock(startsAt);
        }

        /** And the day, which stands below it. */
        public String date() {
            return new Times(zone).dateFrom(startsAt, now);
        }

        /** It has not begun, and is still to come. */
        public boolean toCome() {
            return group() == Group.TODAY || group() == Group.TO_COME;
        }

        public boolean closed() {
            return status.equals(CLOSED);
        }

        Group group() {
            return switch (status) {
                case CLOSED -> Group.OVER;
                case LEFT_OPEN -> Group.LEFT_OVER;
                case NOT_BEGUN -> new Times(zone).isDayOf(startsAt, now) ? Group.TODAY
                        : startsAt.isAfter(now) ? Group.TO_COME : Group.LEFT_OVER;
                default -> Group.RUNNING;
            };
        }

        private Duration away() {
            return Duration.between(startsAt, now).abs();
        }
    }

    /** What lets helpers in. @param link pairs a phone at once @param pin does it when typed */
    public record Joining(Link link, String pin) { }

    /** What is next for a class. @param when "Thursday 4 March, 18:30" @param line empty if nothing can be told */
    public record NextClass(String id, String name, String when, NextLine line) { }

    /** The same with what is next. */
    public StartView withNext(NextClass other) {
        return new StartView(role, initials, classes, plans, join, byName, helpers, notice, guesses, clocks,
                Optional.of(other), now, newcomer);
    }

    /** The same for somebody who has no class yet. @param only what the board set up by itself */
    public StartView forNewcomer(List<ClassRow> only) {
        return new StartView(role, initials, only, plans, join, byName, helpers, notice, guesses, clocks,
                Optional.empty(), now, true);
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

    /** What runs comes first, then what is next, then what is over, each from the nearest on. */
    public static Comparator<ClassRow> order() {
        return Comparator.comparing(ClassRow::group).thenComparing(ClassRow::away);
    }

    /** The classes to be seen at once, by group. */
    public Map<Group, List<ClassRow>> shown() {
        boolean folds = over() > FEW;
        return classes.stream().filter(row -> !row.closed() || !folds)
                .collect(Collectors.groupingBy(ClassRow::group, TreeMap::new, Collectors.toList()));
    }

    /** An address that stays, as it is typed. @param tail such as "wall" */
    public List<String> typed(String tail) {
        return Stream.concat(byName.stream(), Stream.of(join.url())).map(base -> base + tail).toList();
    }

    /** The latest closed classes, once they are so many that they would hide the others. */
    public List<ClassRow> folded() {
        return over() > FEW ? classes.stream().filter(ClassRow::closed).limit(FOLDED).toList() : List.of();
    }

    /** How many classes are closed. */
    public int over() {
        return (int) classes.stream().filter(ClassRow::closed).count();
    }

    /** Whether a class can be set up here. */
    public boolean setsUp() {
        return instructor() && !plans.isEmpty();
    }

    public boolean instructor() {
        return role.filter(Role.INSTRUCTOR::equals).isPresent();
    }

    public Shell shell() {
        return new Shell("Classes", "start", List.of("studio"), "", now.toInstant().toString(), now.getZone().getId(),
                role.orElse(Role.GUEST).token(), initials);
    }

    public boolean paired() {
        return role.filter(Role::staff).isPresent();
    }
}
