package benchpace.files.log;

import benchpace.files.BadFile;
import benchpace.files.SizedText;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.LearnedSteps;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import benchpace.pace.forecast.Forecast;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Feeds recorded classes to the same engine the live board uses and writes the flags it would have raised and its
 * forecasts of home time. Event by event and half minute by half minute; nothing later is ever looked at.
 */
public final class ReplayCommand {
    private static final String STANDARD = "-";
    private static final double FORECAST_EVERY_MINUTES = 5;
    private static final int DONE = 0;
    private static final int OTHER_TROUBLE = 1;
    private static final int BAD_INPUT = 2;

    /**
     * Replays logs.
     *
     * @param logs files to read, in order; {@code -} is {@code in}
     * @param flagsPath where the levels go, {@code class_id,seat,t,level}; {@code -} is {@code out}
     * @param forecastsPath where the forecasts go, {@code class_id,t,p10,p50,p90} in seconds; {@code -} is {@code out}
     * @param historyDir a directory of logs of past classes to learn step times from, oldest first by name
     * @return 0 when done, 2 with one sentence on {@code err} when a log is not as it should be, 1 when a file can't
     *         be read or written; nothing is written unless all of it can be
     */
    public int run(List<String> logs, String flagsPath, String forecastsPath, Optional<String> historyDir,
                   InputStream in, Appendable out, Appendable err) throws IOException {
        try {
            PacePriors priors = PacePriors.standard();
            if (historyDir.isPresent()) {
                priors = priors.withSteps(LearnedSteps.learn(history(historyDir.get()), priors));
            }
            List<ClassLog> classes = new ArrayList<>();
            for (String log : logs) {
                classes.add(read(log, in));
            }
            StringBuilder flags = new StringBuilder();
            StringBuilder forecasts = new StringBuilder();
            CSVFormat csv = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
            try (CSVPrinter flagRows = new CSVPrinter(flags, csv);
                    CSVPrinter forecastRows = new CSVPrinter(forecasts, csv)) {
                flagRows.printRecord("class_id", "seat", "t", "level");
                forecastRows.printRecord("class_id", "t", "p10", "p50", "p90");
                for (ClassLog log : classes) {
                    new OneClass(log, new PaceEngine(priors), flagRows, forecastRows).replay();
                }
            }
            write(Map.of(flagsPath, flags.toString()), Map.of(forecastsPath, forecasts.toString()), out);
            return DONE;
        } catch (BadFile bad) {
            err.append(bad.getMessage()).append('\n');
            return BAD_INPUT;
        } catch (FileTrouble trouble) {
            err.append(trouble.getMessage()).append('\n');
            return trouble.code;
        }
    }

    /** A file that can't be read or written, in one sentence. */
    private static final class FileTrouble extends Exception {
        private static final long serialVersionUID = 1L;
        private final int code;

        FileTrouble(String sentence, int code) {
            super(sentence);
            this.code = code;
        }
    }

    private static ClassLog read(String file, InputStream in) throws FileTrouble {
        try {
            if (file.equals(STANDARD)) {
                return log("standard input", in);
            }
            try (InputStream log = Files.newInputStream(Path.of(file))) {
                return log(file, log);
            }
        } catch (SizedText.TooLarge large) {
            throw new FileTrouble(file + ": it " + large.getMessage() + " of a class log.", BAD_INPUT);
        } catch (CharacterCodingException notUtf8) {
            throw new FileTrouble(file + ": this is not text in UTF-8.", BAD_INPUT);
        } catch (IOException | InvalidPathException missing) {
            throw new FileTrouble(file + ": this file can't be read.", BAD_INPUT);
        }
    }

    private static ClassLog log(String shown, InputStream in) throws IOException {
        return ClassLogReader.read(shown, new StringReader(SizedText.read(in, SizedText.LOG)));
    }

    private static List<ClassTrack> history(String directory) throws FileTrouble {
        List<Path> files;
        try (Stream<Path> listed = Files.list(Path.of(directory))) {
            files = listed.filter(f -> f.getFileName().toString().endsWith(".jsonl")).sorted().toList();
        } catch (IOException | UncheckedIOException | InvalidPathException missing) {
            throw new FileTrouble(directory + ": this directory can't be read.", BAD_INPUT);
        }
        List<ClassTrack> past = new ArrayList<>();
        for (Path file : files) {
            ClassLog log = read(file.toString(), InputStream.nullInputStream());
            TrackFold fold = new TrackFold(log);
            log.events().forEach(fold::apply);
            past.add(fold.track());
        }
        return past;
    }

    private static void write(Map<String, String> flags, Map<String, String> forecasts, Appendable out)
            throws IOException, FileTrouble {
        Map<Path, Path> ready = new HashMap<>();
        String current = "";
        try {
            for (Map<String, String> file : List.of(flags, forecasts)) {
                for (Map.Entry<String, String> entry : file.entrySet()) {
                    current = entry.getKey();
                    if (!current.equals(STANDARD)) {
                        Path target = Path.of(current).toAbsolutePath();
                        Path draft = Files.createTempFile(target.getParent(), ".replay", ".csv");
                        ready.put(draft, target);
                        Files.writeString(draft, entry.getValue());
                    }
                }
            }
            for (Map.Entry<Path, Path> move : ready.entrySet()) {
                current = move.getValue().toString();
                Files.move(move.getKey(), move.getValue(), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException | InvalidPathException failed) {
            for (Path draft : ready.keySet()) {
                Files.deleteIfExists(draft);
            }
            throw new FileTrouble(current + ": this file can't be written.", OTHER_TROUBLE);
        }
        for (Map<String, String> file : List.of(flags, forecasts)) {
            if (file.containsKey(STANDARD)) {
                out.append(file.get(STANDARD));
            }
        }
    }

    /** One class on its way through the engine. */
    private static final class OneClass {
        private final ClassLog log;
        private final PaceEngine engine;
        private final CSVPrinter flags;
        private final CSVPrinter forecasts;
        private final TrackFold fold;
        private final Map<Integer, Level> shown = new HashMap<>();
        private ClassTrack track;
        private PaceMemory memory = PaceMemory.EMPTY;
        private double nextForecast = FORECAST_EVERY_MINUTES;

        OneClass(ClassLog log, PaceEngine engine, CSVPrinter flags, CSVPrinter forecasts) {
            this.log = log;
            this.engine = engine;
            this.flags = flags;
            this.forecasts = forecasts;
            this.fold = new TrackFold(log);
            this.track = fold.track();
        }

        void replay() throws IOException {
            double end = log.events().stream().mapToDouble(LogEvent::seconds).max().orElse(0);
            TreeSet<Double> moments = new TreeSet<>();
            log.events().forEach(e -> moments.add(e.seconds()));
            double grid = PaceEngine.TICK_MINUTES * 60;
            for (double seconds = 0; seconds <= end; seconds += grid) {
                moments.add(seconds);
            }
            int next = 0;
            for (double seconds : moments) {
                while (next < log.events().size() && log.events().get(next).seconds() <= seconds) {
                    fold.apply(log.events().get(next++));
                }
                look(seconds);
            }
        }

        private void look(double seconds) throws IOException {
            double now = seconds / 60;
            ClassTrack fresh = fold.track();
            memory = engine.follow(track, memory, fresh, now);
            track = fresh;
            Map<Integer, Level> levels = engine.levels(track, now, memory);
            for (ClassLog.Place place : log.places()) {
                Level level = levels.get(place.seat());
                Level before = shown.put(place.seat(), level);
                if (level != (before == null ? Level.NONE : before)) {
                    flags.printRecord(log.classId(), place.seat(), number(seconds),
                            level.name().toLowerCase(Locale.ROOT));
                }
            }
            if (now >= nextForecast) {
                Forecast forecast = engine.forecast(track, now);
                forecasts.printRecord(log.classId(), number(seconds), number(60 * forecast.p10()),
                        number(60 * forecast.p50()), number(60 * forecast.p90()));
                nextForecast = FORECAST_EVERY_MINUTES * (Math.floor(now / FORECAST_EVERY_MINUTES) + 1);
            }
        }

        private static String number(double seconds) {
            return seconds == Math.rint(seconds) ? Long.toString((long) seconds)
                    : String.format(Locale.ROOT, "%.1f", seconds);
        }
    }
}
