package benchpace;

import benchpace.files.CureCommand;
import benchpace.files.PlanCheck;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
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
            return PlanCheck.run(plan, System.in, spec.commandLine().getOut(), spec.commandLine().getErr());
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
