package benchpace.files.cure;

import benchpace.cure.solver.CureMilestones;
import benchpace.cure.solver.CureSolver;
import benchpace.files.BadFile;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The {@code cure} command: a case file in, the milestones of every case out. */
public final class CureCommand {
    private static final int DONE = 0;
    private static final int BAD_INPUT = 2;

    /**
     * Runs the command. Nothing is written to {@code out} unless every case is sound and solved.
     *
     * @param pathOrDash a file, or {@code -} for {@code in}
     * @return 0 when done, 2 when the input cannot be used (then one sentence stands on {@code err})
     * @throws IOException when {@code out} or {@code err} cannot be written
     */
    public int run(String pathOrDash, InputStream in, Appendable out, Appendable err) throws IOException {
        List<CureCaseFile.NamedCase> cases;
        try {
            cases = read(pathOrDash, in);
        } catch (BadFile e) {
            err.append(e.getMessage()).append(System.lineSeparator());
            return BAD_INPUT;
        }
        List<CureMilestones> found = new ArrayList<>();
        for (CureCaseFile.NamedCase one : cases) {
            found.add(CureSolver.solve(one.coolingCase()).milestones());
        }
        StringWriter text = new StringWriter();
        CureCaseFile.write(cases, found, text);
        out.append(text.getBuffer()).append(System.lineSeparator());
        return DONE;
    }

    private static List<CureCaseFile.NamedCase> read(String pathOrDash, InputStream in) {
        String name = pathOrDash.equals("-") ? "Standard input" : pathOrDash;
        try {
            if (pathOrDash.equals("-")) {
                return CureCaseFile.read(name, in);
            }
            Path path = Path.of(pathOrDash);
            if (!Files.exists(path)) {
                throw new BadFile("There is no file " + name + ".");
            }
            if (Files.isDirectory(path)) {
                throw new BadFile(name + " is a folder, not a file of cooling cases.");
            }
            try (InputStream file = new BufferedInputStream(Files.newInputStream(path))) {
                return CureCaseFile.read(name, file);
            }
        } catch (InvalidPathException e) {
            throw new BadFile(name + " is not the name of a file.");
        } catch (IOException e) {
            throw new BadFile(name + " cannot be read.");
        }
    }
}
