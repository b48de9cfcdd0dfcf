package benchpace.report;

import benchpace.files.BadFile;
import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.pace.engine.ClassSimulator;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Simulated classes that have happened, with late, missing and swept ticks, and with candles for them. */
public final class SimulatedPasts {
    private SimulatedPasts() { }

    /** A class that has happened, and its candles. */
    public record Past(ClassTrack track, Map<Integer, CandleTime> candles) { }

    public static Past of(long seed, int seats, ClassSimulator.Habit habit) {
        try {
            ClassLog log = ClassLogReader.read("c", new StringReader(String.join("\n",
                    ClassSimulator.simulate("c", seats, habit, seed).lines())));
            TrackFold fold = new TrackFold(log);
            log.events().forEach(fold::apply);
            ClassTrack track = fold.track();
            SplittableRandom random = new SplittableRandom(seed);
            Map<Integer, CandleTime> candles = new TreeMap<>();
            for (SeatTrack seat : track.seats()) {
                List<StepTime> times = StepTime.of(track, seat);
                if (!times.isEmpty() && times.get(times.size() - 1).step() == track.pourStep()
                        && seat.leftMinutes() == SeatTrack.NOT_YET) {
                    double poured = times.get(times.size() - 1).toMinutes() + (random.nextInt(9) == 0 ? 6 : 0);
                    candles.put(seat.seat(), new CandleTime(poured, poured + 55 + 12 * random.nextDouble()));
                }
            }
            return new Past(track, candles);
        } catch (IOException | BadFile impossible) {
            throw new AssertionError(impossible);
        }
    }
}
