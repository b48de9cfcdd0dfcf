package benchpace.web.screen.devices;

import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.start.StartView;
import java.util.Comparator;
import java.util.List;

/**
 * Who has been let in.
 *
 * @param rows      the devices, the newest first
 * @param helpers   what lets helpers in
 * @param walls     what lets walls in
 * @param chosenPin the instructor's PIN was chosen when the board was started, so that it is not drawn anew
 */
public record DevicesPage(List<Row> rows, StartView.Joining helpers, StartView.Joining walls, boolean chosenPin) {

    /**
     * A device.
     *
     * @param initials of a helper; may be empty
     * @param name     what people call it; may be empty
     * @param since    when it was paired, in words
     * @param seen     when it was last seen, in words
     * @param looking  it has a screen of a class open just now
     * @param thisOne  it is the one that is looked at
     */
    public record Row(String mark, Role role, String initials, String name, String since, String seen,
                      boolean looking, boolean thisOne) {

        public String who() {
            return switch (role) {
                case INSTRUCTOR -> "Instructor";
                case HELPER -> initials.isEmpty() ? "Helper" : "Helper " + initials;
                case WALL -> "Wall";
                case GUEST -> throw new IllegalStateException("a guest's phone is not paired");
            };
        }

        /** "Has a screen open now. Paired today, 18:55." */
        public String when() {
            return looking ? "Has a screen open now. Paired " + inside(since) + "."
                    : "Last seen " + inside(seen) + ", paired " + inside(since) + ".";
        }

        private static String inside(String moment) {
            return moment.startsWith("Today") ? "today" + moment.substring("Today".length()) : moment;
        }

        /** What it is called in a question. */
        public String called() {
            return name.isEmpty() ? who() : name + " (" + who() + ")";
        }
    }

    public DevicesPage {
        rows = List.copyOf(rows);
    }

    /** Those of a role, the one that is looked at first. */
    public List<Row> rows(Role role) {
        return rows.stream().filter(row -> row.role() == role)
                .sorted(Comparator.comparing(row -> !row.thisOne())).toList();
    }

    public Shell shell() {
        return new Shell("Devices", "devices", List.of(), "", "", "UTC", Role.INSTRUCTOR.token(), "");
    }

    public boolean alone() {
        return rows.size() < 2;
    }
}
