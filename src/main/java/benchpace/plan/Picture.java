package benchpace.plan;

/**
 * What a drawing beside a step, an activity or an empty page shows. A plan's step names one; otherwise its kind gives
 * the usual one. One family: {@code web.screen.drawing} draws them.
 */
public enum Picture {
    WELCOME, TALK, VESSEL, WICK, SCENT, COLOUR, SCALE, STIR, WATER, POUR, CENTRE, SETTING, HAND_TEST, TRIM, LID, LABEL,
    WRAP, FLAME, PAUSE, NAME, SHORT_CRAFT, LONG_CRAFT, BROWSE, TIDY, SHELF, TABLE;

    /** Whether the vessel that is poured stands in it, and so is drawn as the plan has it. */
    public boolean showsVessel() {
        return switch (this) {
            case VESSEL, WICK, SCALE, WATER, POUR, CENTRE, SETTING, HAND_TEST, TRIM, LID, LABEL, FLAME -> true;
            default -> false;
        };
    }
}
