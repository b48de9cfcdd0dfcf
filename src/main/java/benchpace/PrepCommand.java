package benchpace;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.plan.PlanCheck;
import benchpace.files.plan.PlanReading;
import benchpace.files.prep.PrepJson;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import benchpace.prep.sheet.PrepSheet;
import benchpace.words.prep.PrepText;
import benchpace.words.prep.PrepWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The day before on the command line: a plan in, its prep sheet out. */
@Command(name = "prep", mixinStandardHelpOptions = true,
        description = "Works out what a class needs the day before: wax, melters, circuits, supplies, timetable.")
final class PrepCommand implements Callable<Integer> {
    /** Any seed would do; the same one gives the same odds each time. */
    private static final long SEED = 1;
    private static final Logger LOG = System.getLogger(PrepCommand.class.getName());

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "PLAN.json", description = "the plan; - reads standard input")
    private String plan;
    @Option(names = "--seats", required = true, paramLabel = "N", description = "how many seats the class has")
    private String seats;
    @Option(names = "--candles", paramLabel = "ID=N", split = ",",
            description = "how many seats make which candle; the others make the plan's first")
    private List<String> candles = List.of();
    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @Override public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        PlanReading reading = PlanCheck.read(plan, System.in);
        for (Finding problem : reading.problems()) {
            err.println(PlanCheck.told(plan, problem));
        }
        if (reading.ifSound().isEmpty()) {
            return Main.BAD_INPUT;
        }
        PrepSheet sheet = sheet(reading.ifSound().get());
        out.println(json ? Json.pretty(PrepJson.write(sheet, PrepWords.problems(sheet)))
                : PrepText.of(reading.ifSound().get(), sheet).stripTrailing());
        out.flush();
        return 0;
    }

    private PrepSheet sheet(Plan sound) {
        int count = seats();
        Map<String, Integer> chosen = chosen();
        PrepSheet sheet;
        try {
            sheet = PrepSheet.of(sound, count, chosen);
        } catch (IllegalArgumentException refused) {
            throw new Stop(Main.BAD_INPUT, "--candles: " + refused.getMessage() + ".", refused);
        }
        try {
            return sheet.with(Evenings.of(Setting.of(sound, count, chosen), SEED).timetable());
        } catch (RuntimeException failed) { // the rest of the sheet stands
            LOG.log(Level.WARNING, "the timetable cannot be worked out: " + LogLine.brief(failed));
            return sheet.withoutTimetable();
        }
    }

    private int seats() {
        try {
            return new SeatNumber(Integer.parseInt(seats)).value();
        } catch (IllegalArgumentException refused) { // no whole number, or none a class has
            throw new Stop(Main.BAD_INPUT, "--seats: a class has 1 to " + SeatNumber.MOST + " seats, not " + seats
                    + ".", refused);
        }
    }

    private Map<String, Integer> chosen() {
        Map<String, Integer> chosen = new LinkedHashMap<>();
        for (String choice : candles) {
            int equals = choice.indexOf('=');
            try {
                if (chosen.put(choice.substring(0, equals), Integer.parseInt(choice.substring(equals + 1))) == null) {
                    continue;
                }
            } catch (IndexOutOfBoundsException | NumberFormatException refused) {
                throw new Stop(Main.BAD_INPUT, "--candles: \"" + choice
                        + "\" is not a candle with its number of seats, like amber-soy=4.", refused);
            }
            throw new Stop(Main.BAD_INPUT, "--candles: \"" + choice.substring(0, equals) + "\" is chosen twice.");
        }
        return chosen;
    }
}
