package benchpace;

import java.io.PrintWriter;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Floor 6: the command line. Without a command the board is served with the demo class. */
@Command(name = "benchpace", mixinStandardHelpOptions = true, version = Main.VERSION,
        description = "A live pacing board for hands-on candle classes.",
        synopsisSubcommandLabel = "COMMAND")
public final class Main implements Callable<Integer> {
    /** What the program is called and which it is. */
    static final String VERSION = "Benchpace 0.1.0";
    /** Exit code for wrong usage and bad input. */
    public static final int BAD_INPUT = 2;
    private static final int FAILED = 1;
    private static final String SERVE = "serve";
    private static final Logger LOG = System.getLogger(Main.class.getName());

    @Option(names = "--debug", scope = CommandLine.ScopeType.INHERIT, description = "show where a failure arose")
    private boolean debug;

    private Main() { }

    public static void main(String[] args) {
        Logs.quieten(List.of(args).contains("--debug"));
        Thread.setDefaultUncaughtExceptionHandler((thread, e) ->
                LOG.log(Level.ERROR, "the thread " + thread.getName() + " ended", e));
        int code = run(args);
        if (code != ServeCommand.SERVING) {
            System.exit(code);
        }
    }

    /** Runs one command line and returns its exit code. */
    public static int run(String... args) {
        Main main = new Main();
        CommandLine line = commands(main, args).setParameterExceptionHandler(Main::wrongUsage)
                .setExecutionExceptionHandler((e, command, parsed) -> main.failed(e, command));
        int code;
        try {
            code = line.execute(args.length == 0 ? new String[] {SERVE} : args);
        } catch (OutOfMemoryError e) {
            code = main.failed(new Stop(FAILED, "There is not enough memory for this; start Java with more "
                    + "(-Xmx1g, for instance).", e), line);
        } catch (Error e) { // of the machine or of an incomplete program, not of what was asked
            code = main.failed(new Stop(FAILED, "It failed: " + LogLine.brief(e) + ".", e), line);
        }
        line.getSubcommands().values().forEach(command -> {
            command.getOut().flush();
            command.getErr().flush();
        });
        return code;
    }

    /** Who opens the board waits for no other command to be described: those take a twentieth of a second. */
    private static CommandLine commands(Main main, String... args) {
        CommandLine line = new CommandLine(main).addSubcommand(new ServeCommand());
        return args.length == 0 || args[0].equals(SERVE) ? line
                : line.addSubcommand(new FileCommands.Check())
                        .addSubcommand(new FileCommands.Cure())
                        .addSubcommand(new PrepCommand())
                        .addSubcommand(new FileCommands.Replay())
                        .addSubcommand(new ProblemCommand())
                        .addSubcommand(new BackupCommands.MakeBackup())
                        .addSubcommand(new BackupCommands.RestoreBackup())
                        .addSubcommand(new ExportCommand());
    }

    @Override public Integer call() {
        throw new AssertionError("without a command the board is served");
    }

    private static int wrongUsage(ParameterException e, String[] args) {
        e.getCommandLine().getErr().println(e.getMessage().lines().findFirst().orElse("Wrong usage.")
                + " (--help shows how)");
        return BAD_INPUT;
    }

    private int failed(Exception e, CommandLine command) {
        PrintWriter err = command.getErr();
        if (debug) {
            e.printStackTrace(err);
        }
        if (e instanceof Stop stop) {
            err.println(stop.getMessage());
            return stop.code();
        }
        err.println("It failed: " + LogLine.brief(e) + ".");
        return FAILED;
    }
}
