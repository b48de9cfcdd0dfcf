package benchpace;

import benchpace.files.cure.CureCommand;
import benchpace.files.log.ReplayCommand;
import benchpace.files.plan.PlanCheck;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The commands that read files and write answers, without a board. */
final class FileCommands {
    private FileCommands() { }

    @Command(name = "check", mixinStandardHelpOptions = true,
            description = "Says everything that is wrong with a plan, a line each; nothing if it is sound.")
    static final class Check implements Callable<Integer> {
        @Spec
        private CommandSpec spec;
        @Parameters(paramLabel = "PLAN.json", description = "the plan; - reads standard input")
        private String plan;

        @Override public Integer call() throws IOException {
            int code = PlanCheck.run(plan, System.in, spec.commandLine().getOut(), spec.commandLine().getErr());
            spec.commandLine().getOut().flush();
            spec.commandLine().getErr().flush();
            return code;
        }
    }

    @Command(name = "replay", mixinStandardHelpOptions = true,
            description = "Writes the flags and the forecasts of home time that recorded classes would have raised.")
    static final class Replay implements Callable<Integer> {
        @Spec
        private CommandSpec spec;
        @Parameters(paramLabel = "LOG.jsonl", arity = "1..*", description = "class logs; - reads standard input")
        private List<String> logs;
        @Option(names = "--flags", required = true, paramLabel = "F.csv",
                description = "where every change of a seat's level goes; - is standard output")
        private String flags;
        @Option(names = "--forecasts", required = true, paramLabel = "G.csv",
                description = "where the forecasts go; - is standard output")
        private String forecasts;
        @Option(names = "--history", paramLabel = "DIR",
                description = "logs of past classes to learn step times from, the oldest first by name")
        private String history;

        @Override public Integer call() throws IOException {
            PrintWriter out = spec.commandLine().getOut();
            PrintWriter err = spec.commandLine().getErr();
            int code = new ReplayCommand().run(logs, flags, forecasts, Optional.ofNullable(history), System.in, out,
                    err);
            out.flush();
            err.flush();
            return code;
        }
    }

    @Command(name = "cure", mixinStandardHelpOptions = true,
            description = "Computes when each cooling case of a file sets; the answers as JSON on standard output.")
    static final class Cure implements Callable<Integer> {
        @Spec
        private CommandSpec spec;
        @Parameters(paramLabel = "CASES.json", description = "an array of cooling cases; - reads standard input")
        private String cases;

        @Override public Integer call() throws IOException {
            int code = new CureCommand().run(cases, System.in, spec.commandLine().getOut(),
                    spec.commandLine().getErr());
            spec.commandLine().getOut().flush();
            spec.commandLine().getErr().flush();
            return code;
        }
    }
}
