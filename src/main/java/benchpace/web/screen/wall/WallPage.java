package benchpace.web.screen.wall;

import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.Shell;

/** All that the wall shows at first. @param parts the live parts, as the stream sends them later */
public record WallPage(Shell shell, Parts parts) {
    /** Of a name beside the time, in em. */
    private static final double ONE_LINE = 19.5;

    /** What stands at the top: the studio, where it has a name. */
    public String studio() {
        return ofClass() ? shell.title() : shell.studio().name();
    }

    /** Whether it takes two lines. */
    public boolean longName() {
        return Letters.PLAIN.width(studio()) > ONE_LINE;
    }

    /** Without a studio's name the class's stands there. */
    public boolean ofClass() {
        return shell.studio().name().isEmpty();
    }
}
