package benchpace.files.plan;

import benchpace.files.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** The {@code check} command: says nothing of a sound plan, and everything that is wrong with another. */
public final class PlanCheck {
    public static final int SOUND = 0;
    public static final int BAD_INPUT = 2;

    private PlanCheck() { }

    /**
     * @param path where the plan stands, {@code -} for {@code in}
     * @param out  stays untouched: a sound plan needs no words
     * @param err  takes a line a problem: file, place, sentence
     * @return the exit code, 0 or 2
     * @throws IOException if nothing can be written to {@code err}
     */
    public static int run(String path, InputStream in, Appendable out, Appendable err) throws IOException {
        List<Finding> problems = read(path, in).problems();
        for (Finding problem : problems) {
            err.append(told(path, problem)).append('\n');
        }
        return problems.isEmpty() ? SOUND : BAD_INPUT;
    }

    /** The plan, or everything that is wrong with it; a file that cannot be read is a problem like others. */
    public static PlanReading read(String path, InputStream in) {
        try {
            return path.equals("-") ? PlanFile.read(in) : PlanFile.read(Path.of(path));
        } catch (IOException | InvalidPathException unreadable) {
            return new PlanReading.Unsound(List.of(new Finding("", why(path, unreadable))));
        }
    }

    /** A problem on a line: file, place, sentence. */
    public static String told(String path, Finding problem) {
        return (path.equals("-") ? "standard input" : path) + ": " + problem;
    }

    private static String why(String path, Exception unreadable) {
        if (unreadable instanceof InvalidPathException) {
            return "is not the name of a file";
        }
        if (!path.equals("-") && Files.isDirectory(Path.of(path))) {
            return "is a folder, not a plan";
        }
        return !path.equals("-") && Files.notExists(Path.of(path)) ? "there is no such file" : "cannot be read";
    }
}
