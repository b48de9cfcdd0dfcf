package benchpace.web.screen.shell;

import benchpace.board.view.ClassView;

/**
 * What a page carries with it for when the board is out of its reach, as JSON; empty texts where that is not known.
 *
 * @param steps the plan's steps
 * @param known what the taps so far have come to
 */
public record Carried(String steps, String known) {
    public static Carried of(ClassView view) {
        if (view.known().steps().isEmpty()) {
            return new Carried("", "");
        }
        return new Carried(KnownJson.steps(view.known()), KnownJson.known(view));
    }
}
