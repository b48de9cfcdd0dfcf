package benchpace;

import benchpace.board.ProblemReports;
import benchpace.board.view.ProblemFacts;
import benchpace.files.TextZip;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Draft;
import benchpace.store.sqlite.FolderLock;
import benchpace.store.sqlite.NoRoom;
import benchpace.store.sqlite.StoreException;
import benchpace.words.ProblemWords;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Writes one file without names that may be sent along with a question. What is read is a copy of the data as they
 * stood in one moment, made beside a board that may be open on them; nothing of theirs is changed.
 */
@Command(name = "report-problem", mixinStandardHelpOptions = true,
        description = "Writes one file without names to send along with a question; nothing is sent by the program.")
final class ProblemCommand implements Callable<Integer> {
    private static final int FAILED = 1;

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE", description = "where the file goes, which is not there yet; - is standard output")
    private String file;
    @Option(names = "--data", required = true, paramLabel = "DIR", description = "where classes are kept")
    private Path data;
    @Option(names = "--class", paramLabel = "CLASS_ID",
            description = "a class to take along, as often as there are some; else the latest three")
    private List<String> classes = List.of();

    @Override public Integer call() {
        if (!file.equals("-") && Files.exists(path())) {
            throw taken(null);
        }
        write(facts());
        return 0;
    }

    private Path path() {
        if (file.isBlank()) {
            throw new Stop(Main.BAD_INPUT, "FILE must not be empty.");
        }
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new Stop(Main.BAD_INPUT, "FILE is no name of a file: " + file + ".", e);
        }
    }

    private ProblemFacts facts() {
        try (DataCopy copy = DataCopy.of(data); Database original = Database.besideBoard(data)) {
            ProblemReports problems = ProblemReports.ofCopy(copy.database(), original,
                    FolderLock.isHeld(data), Main.VERSION, Logs::recent);
            return problems.facts(chosen(problems), List.of());
        } catch (NoRoom e) { // of the copy: nothing is wrong with the data
            throw new Stop(FAILED, e.getMessage(), e);
        } catch (StoreException e) {
            if (!classes.isEmpty()) {
                throw new Stop(FAILED, e.getMessage(), e);
            }
            return ProblemReports.unopened(Main.VERSION, e, data.toAbsolutePath().normalize().toString());
        }
    }

    private List<String> chosen(ProblemReports problems) {
        List<ProblemReports.Choice> choices = problems.choices();
        List<String> known = choices.stream().map(ProblemReports.Choice::id).toList();
        classes.stream().filter(id -> !known.contains(id)).findFirst().ifPresent(id -> {
            throw new Stop(Main.BAD_INPUT, "--class: no class \"" + id + "\" can be read in " + data + ".");
        });
        return classes.isEmpty() ? ProblemReports.usual(choices) : classes;
    }

    /** Beside its place first, so that no half file is ever found there. */
    private void write(ProblemFacts facts) {
        try {
            if (file.equals("-")) {
                TextZip.write(ProblemWords.files(facts), Instant.now(), new FileOutputStream(FileDescriptor.out));
                return;
            }
            Path whole = path().toAbsolutePath();
            try (Draft part = Draft.beside(whole)) {
                try (OutputStream out = Files.newOutputStream(part.file())) {
                    TextZip.write(ProblemWords.files(facts), Instant.now(), out);
                }
                Files.move(part.file(), whole);
            }
        } catch (FileAlreadyExistsException e) {
            throw taken(e);
        } catch (IOException | NoRoom e) {
            throw new Stop(FAILED, "The file " + file + " cannot be written, its disk may be full or its folder not "
                    + "there: nothing was left of it.", e);
        }
        spec.commandLine().getOut().println("Written to " + file + ". It is without names; README.txt in it says what "
                + "is there. Nothing was sent.");
    }

    private Stop taken(Exception cause) {
        String sentence = "The file " + file + " is there already, and nothing is written over: choose another name.";
        return cause == null ? new Stop(Main.BAD_INPUT, sentence) : new Stop(Main.BAD_INPUT, sentence, cause);
    }
}
