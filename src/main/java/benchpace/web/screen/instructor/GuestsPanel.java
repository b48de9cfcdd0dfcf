package benchpace.web.screen.instructor;

import benchpace.board.view.ClassView;

/** The switch that lets guests say with their own phones that they are done. @param open whether it can be switched */
public record GuestsPanel(String classId, boolean on, boolean open) {
    public static GuestsPanel of(ClassView view) {
        return new GuestsPanel(view.id(), view.guestsMayTell(), view.stage() != ClassView.Stage.CLOSED);
    }
}
