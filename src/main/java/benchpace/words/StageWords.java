package benchpace.words;

import benchpace.board.view.ClassView;

/** Says what the class is doing. */
public final class StageWords {
    /** Said to guests once their class is over. */
    public static final String THANKS = "Thank you for coming";
    /** What to mind on the way home, of a class that has poured. */
    public static final String ON_THE_WAY_HOME = "Your candle stays soft inside for hours. Carry it level.";

    private StageWords() { }

    /** The step it is at, or a plain word before the first and after the last. */
    public static String heading(ClassView view) {
        return view.present().step().map(ClassView.StepView::name).orElseGet(() -> switch (view.stage()) {
            case BEFORE -> "Before the class";
            case CLOSED -> "The class is over";
            default -> "Nothing is open";
        });
    }
}
