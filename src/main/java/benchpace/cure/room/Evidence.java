package benchpace.cure.room;

import benchpace.cure.CuringCandle;
import benchpace.cure.solver.CureMilestones;
import java.util.Optional;

/** What a room shows about its candles' cooling. Minutes count from that candle's pour. */
public sealed interface Evidence {
    /** The candle it was seen at. */
    CuringCandle candle();

    /** When it was seen, minutes from the pour, 0 or more. */
    double elapsedMinutes();

    /** The middle of the top surface by infrared thermometer; standard deviation {@value #READING_SD_KELVIN} K. */
    record SurfaceReading(CuringCandle candle, double elapsedMinutes, double celsius) implements Evidence {
        static final double READING_SD_KELVIN = 2;
        private static final double BELOW_ROOM = 5;
        private static final double ABOVE_POUR = 10;

        public SurfaceReading {
            check(elapsedMinutes);
            if (refusal(candle, celsius).isPresent()) {
                throw new IllegalArgumentException("a reading that is not believed: " + celsius);
            }
        }

        /** Refuses a reading that no candle between pour and room temperature can show; NaN too. */
        public static Optional<ReadingRefusal> refusal(CuringCandle candle, double celsius) {
            double lowest = candle.coolingCase().roomC() - BELOW_ROOM;
            double highest = candle.coolingCase().pourC() + ABOVE_POUR;
            return celsius >= lowest && celsius <= highest ? Optional.empty()
                    : Optional.of(new ReadingRefusal(celsius, lowest, highest));
        }
    }

    /**
     * Somebody saw that the skin had just formed; judged to about 15 per cent of the time (common practice, no
     * source).
     */
    record SkinFormed(CuringCandle candle, double elapsedMinutes) implements Evidence {
        static final double SD_LOG_MINUTES = 0.15;

        public SkinFormed {
            check(elapsedMinutes);
        }
    }

    /** The instructor's hand test: set enough to be wrapped and carried; judged to about 0.08 of the solid fraction. */
    record JudgedSet(CuringCandle candle, double elapsedMinutes) implements Evidence {
        static final double SD_FRACTION = 0.08;

        public JudgedSet {
            check(elapsedMinutes);
        }
    }

    private static void check(double elapsedMinutes) {
        if (!(elapsedMinutes >= 0 && elapsedMinutes <= CureMilestones.HORIZON_MINUTES)) {
            throw new IllegalArgumentException("elapsed minutes outside a day: " + elapsedMinutes);
        }
    }
}
