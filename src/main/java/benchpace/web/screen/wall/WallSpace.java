package benchpace.web.screen.wall;

import benchpace.board.view.ClassView;
import benchpace.web.screen.wait.WaitCall;
import java.util.List;

/**
 * How much room the wall has for the candles' own times, in units of a 1920 x 1080 screen. The style sheet
 * {@code wall-wait.css} draws with the same sizes; letters are taken as wide as a common sans serif has them.
 *
 * @param height  for the list of candles
 * @param letters of seat numbers on a line, in the usual size
 * @param dense   the same in small letters
 */
record WallSpace(int height, int letters, int dense) {
    /** Between the head with its ribbon and the foot. */
    private static final int MIDDLE = 510;
    private static final int FINISHING = 330;
    private static final int GAP = 18;
    private static final int LINE = 84;
    private static final int DENSE_LINE = 64;
    private static final int CALL_LINE = 84;
    private static final int CALL_DETAILS = 68;
    private static final int CALL_EDGE = 24;

    static WallSpace of(ClassView view, List<WaitCall> calls) {
        if (!WallMain.waits(view)) {
            return new WallSpace(FINISHING, 30, 44);
        }
        boolean cut = view.room().cutAway().isPresent();
        int call = calls.isEmpty() ? 0 : height(calls.get(0), cut) + GAP;
        return new WallSpace(MIDDLE - call, cut ? 14 : 30, cut ? 21 : 44);
    }

    /** The first call stands in any case. */
    private static int height(WaitCall call, boolean cut) {
        int time = call.count().isPresent() ? "in 10 min".length() : call.clock().length();
        int lead = lines(call.lead().length() + 1 + time, cut ? 28 : 42);
        int details = call.details().isEmpty() ? 0 : lines(call.details().length(), cut ? 36 : 54);
        return CALL_EDGE + lead * CALL_LINE + details * CALL_DETAILS;
    }

    private static int lines(int letters, int aLine) {
        return (letters + aLine - 1) / aLine;
    }

    boolean holds(List<WallSeats.Group> groups) {
        return LINE * lines(groups, letters) <= height;
    }

    boolean holdsDense(List<WallSeats.Group> groups) {
        return DENSE_LINE * lines(groups, dense) <= height;
    }

    private static int lines(List<WallSeats.Group> groups, int aLine) {
        return groups.stream().mapToInt(g -> lines(g.words().length(), aLine)).sum();
    }
}
