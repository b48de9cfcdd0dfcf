package benchpace.web;

import benchpace.board.view.ClassView;
import benchpace.files.Json;
import benchpace.web.classes.StateJson;
import benchpace.web.screen.shell.Viewer;

/** The state of a class as programs get it, for tests of other rooms. */
public final class StateText {
    private StateText() { }

    public static String of(ClassView view, Viewer viewer) {
        return Json.text(StateJson.of(view, viewer));
    }
}
