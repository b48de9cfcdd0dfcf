package benchpace.web.screen;

import benchpace.board.ClassView;

/** The switch that lets guests say with their own phones that they are done. @param open whether it can be switched */
public record GuestsPanel(String classId, boolean on, boolean open) {
    static GuestsPanel of(ClassView view) {
        return new GuestsPanel(view.id(), view.guestsMayTell(), view.stage() != ClassView.Stage.CLOSED);
    }
}
