package benchpace.web.screen.data;

import benchpace.board.view.ProblemFacts;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Shell;
import benchpace.words.ProblemWords;
import java.util.List;

/**
 * What would be in the file that helps those who help, before it is downloaded.
 *
 * @param choices the latest classes, the latest first
 * @param inside  what is in it, a line a kind
 * @param outside what is not
 * @param board   the text about the board, as it will be in the file
 * @param log     the lines noted last, as they will be in it
 */
public record ProblemPage(List<Choice> choices, List<String> inside, List<String> outside, String board, String log) {
    /** So many classes can be chosen from. */
    public static final int MOST_CHOICES = 12;

    /** @param taken whether it is taken unless somebody says otherwise */
    public record Choice(String id, String name, String when, boolean taken) { }

    public static ProblemPage of(List<Choice> choices, ProblemFacts facts) {
        var files = ProblemWords.files(facts);
        return new ProblemPage(List.copyOf(choices), ProblemWords.inside(), ProblemWords.outside(),
                files.get("board.txt"), files.get("log.txt"));
    }

    public Shell shell() {
        return new Shell("A file to help us", "data", List.of(), "", "", "UTC", Role.INSTRUCTOR.token(), "");
    }
}
