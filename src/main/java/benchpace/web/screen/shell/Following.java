package benchpace.web.screen.shell;

/**
 * A page at an address that stays from one class to the next.
 *
 * @param address such as {@code /wall}; empty for the page of one class, whose wall has the mark of its studio
 * @param mark    names what the page shows; another one means that it is no longer the one to show
 */
public record Following(String address, String mark) {
    /** The page of one class. */
    public static final Following NOTHING = new Following("", "");
}
