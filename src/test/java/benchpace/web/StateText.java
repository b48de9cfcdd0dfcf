package benchpace.web;

import benchpace.board.ClassView;
import benchpace.files.Json;
import benchpace.web.screen.Viewer;

/** The state of a class as programs get it, for tests of other rooms. */
public final class StateText {
    private StateText() { }

    public static String of(ClassView view, Viewer viewer) {
        return Json.text(StateJson.of(view, viewer));
    }
}
