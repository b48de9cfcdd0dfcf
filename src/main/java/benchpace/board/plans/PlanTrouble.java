package benchpace.board.plans;

/** What is amiss with the book and is worth a sentence, although it goes on. */
public sealed interface PlanTrouble {
    /** The newest version cannot be read back. @param instead the version that stands for it; 0 if none can be read */
    record Unreadable(String id, int version, int instead) implements PlanTrouble { }

    /** The plan is saved; its file in the data folder is not up to date. */
    record NotWritten(String id, String file) implements PlanTrouble { }
}
