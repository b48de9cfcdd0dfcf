package benchpace.web.screen;

import benchpace.board.ClassView;

/** The event that one tap takes back. @param seq its number; 0 if there is nothing to take back */
public record UndoButton(long seq, String words, String at) {

    static UndoButton of(ClassView view, Times times) {
        return view.undo().map(undo -> new UndoButton(undo.seq(), undo.words(), times.clock(undo.at())))
                .orElse(new UndoButton(0, "", ""));
    }
}
