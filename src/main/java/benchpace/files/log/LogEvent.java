package benchpace.files.log;

/**
 * One line of a class log after the first.
 *
 * @param line its line number, from 1
 * @param seconds when, from the class's start
 * @param type what happened
 * @param seat the seat's number, 0 when the event has none
 * @param step the step's index, -1 when the event has none
 * @param id the event's own id, or for an undo the id undone; "" when there is none
 */
public record LogEvent(int line, double seconds, Type type, int seat, int step, String id) {
    /** The kinds of event a log holds, by their names in the file. */
    public enum Type {
        FINISH_STEP("finish-step", true, true),
        SKIP_STEP("skip-step", true, true),
        UNDO("undo", true, false),
        OPEN_STEP("open-step", false, true),
        ARRIVE("arrive", true, false),
        LEAVE("leave", true, false),
        PAUSE("pause", true, false),
        RESUME("resume", true, false),
        CLAIM("claim", true, false),
        SORTED("sorted", true, false),
        JUDGE_SET("judge-set", true, false),
        STILL_AT_IT("still-at-it", true, true),
        SAYS_DONE("says-done", true, true);

        private final String name;
        private final boolean seated;
        private final boolean stepped;

        Type(String name, boolean seated, boolean stepped) {
            this.name = name;
            this.seated = seated;
            this.stepped = stepped;
        }

        /** Its name in the file. */
        public String fileName() {
            return name;
        }

        boolean isSeated() {
            return seated;
        }

        boolean isStepped() {
            return stepped;
        }
    }
}
