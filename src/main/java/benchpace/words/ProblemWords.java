package benchpace.words;

import benchpace.board.view.ProblemFacts;
import benchpace.board.view.ProblemFacts.ReportedClass;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What may be sent along with a question about the board, as the texts that the bundle holds. */
public final class ProblemWords {
    /** What the bundle is called unless somebody says otherwise. */
    public static final String FILE = "benchpace-problem.zip";
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);
    private static final String README = "README.txt";
    private static final String BOARD = "board.txt";
    private static final String LOG = "log.txt";

    private ProblemWords() { }

    /** The text of each file of the bundle, by its name, the one to read first first. */
    public static Map<String, String> files(ProblemFacts facts) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(README, readme(facts));
        files.put(BOARD, board(facts));
        files.put(LOG, log(facts));
        for (ReportedClass reported : facts.classes()) {
            String name = "classes/class-" + reported.number();
            files.put(name + ".jsonl", reported.lines());
            files.put(name + "-started-from.json", reported.startedFrom());
        }
        return files;
    }

    /** What is in it, a line a kind. */
    public static List<String> inside() {
        return List.of(
                "Versions: of the program, of Java, of the system, of SQLite and of the store.",
                "The store: how many rows its tables have, what its own check says, which settings are set.",
                "What does not work as it should just now, as /health tells it.",
                "The last lines that the program noted, without what they quote, names, addresses, keys and long "
                        + "numbers.",
                "The taps of the classes chosen, with their times and seats, and what these classes started from.");
    }

    /** What is not in it, a line a kind. */
    public static List<String> outside() {
        return List.of(
                "No names: guests are \"guest 3\" by their seat, parties \"party 1\", helpers \"helper 1\", devices "
                        + "\"device 1\".",
                "Nothing that was written: no notes, no allergies, no names of classes, plans, places, steps, candles; "
                        + "\"…\" or a number stands for them.",
                "Nothing of the shelf but how many rows it has, and no plan that none of these classes has.",
                "No PIN, no key, no code and no link.");
    }

    private static String readme(ProblemFacts facts) {
        StringBuilder text = new StringBuilder();
        line(text, "A report of a problem with Benchpace, without names.");
        line(text, "");
        line(text, "The program sends this to nobody. Whoever made it decides whether to send it along with a");
        line(text, "question, and may open every file in it with a text editor first.");
        line(text, "");
        line(text, "What is in it");
        inside().forEach(what -> line(text, "- " + what));
        line(text, "");
        line(text, "What is not in it");
        outside().forEach(what -> line(text, "- " + what));
        line(text, "");
        line(text, "The files");
        line(text, "- " + BOARD + ": versions, the store, what does not work.");
        line(text, "- " + LOG + ": what the program noted last.");
        facts.classes().forEach(reported -> line(text, "- classes/class-" + reported.number() + ".jsonl: "
                + about(reported) + ", an event a line as JSON; beside it what it started from."));
        if (facts.classes().isEmpty()) {
            line(text, "- No class was chosen, or none can be read.");
        }
        return text.toString();
    }

    /** "42 events of the class of 4 March 2027, 18:00 UTC". */
    private static String about(ReportedClass reported) {
        return reported.events() + " events of the class of " + WHEN.format(reported.startsAt()) + " UTC";
    }

    private static String board(ProblemFacts facts) {
        StringBuilder text = new StringBuilder();
        facts.versions().forEach((of, version) -> line(text, of + ": " + version));
        line(text, "Board: " + switch (facts.source()) {
            case BOARD -> "running";
            case BESIDE_BOARD -> "running; its data were read beside it";
            case STOPPED -> "not running";
        });
        if (!facts.fault().isEmpty()) {
            line(text, "The store cannot be opened: " + facts.fault());
        }
        facts.store().ifPresent(store -> {
            line(text, "Check of the store: " + String.join("; ", store.integrity()));
            line(text, "Settings that are set: " + (store.settings().isEmpty() ? "none"
                    : String.join(", ", store.settings())));
            line(text, "");
            line(text, "Rows of the tables");
            store.rows().forEach((table, rows) -> line(text, "  " + table + ": " + rows));
        });
        line(text, "");
        line(text, "Classes that cannot be read back: " + facts.unreadable().size());
        facts.unreadable().forEach(why -> line(text, "  " + why));
        line(text, "");
        line(text, "What does not work as it should");
        facts.degraded().forEach(sentence -> line(text, "  " + sentence));
        if (facts.degraded().isEmpty()) {
            line(text, switch (facts.source()) {
                case BOARD -> "  nothing that the board knows of";
                case BESIDE_BOARD -> "  known to the board alone: the file from its page \"Your data\" tells";
                case STOPPED -> "  not known of a board that is stopped";
            });
        }
        return text.toString();
    }

    private static String log(ProblemFacts facts) {
        StringBuilder text = new StringBuilder();
        facts.log().forEach(noted -> line(text, noted));
        if (facts.log().isEmpty()) {
            line(text, switch (facts.source()) {
                case BOARD -> "Nothing was noted since the board was started.";
                case BESIDE_BOARD -> "What the board noted is known to it alone: the file from its page \"Your data\" "
                        + "tells, and its console.";
                case STOPPED -> "The board is stopped; what it noted stood on its console.";
            });
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }
}
