package benchpace.board.cooling;

import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.MinuteRange;
import benchpace.plan.Candle;
import benchpace.plan.PlanVariants;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A candle on the table, with the temperatures it was really poured at.
 *
 * @param candle what the plan says of it
 * @param curing its cooling case; a second pour is another candle
 */
record PouredCandle(SeatNumber seat, Candle candle, CuringCandle curing, Instant pouredAt, boolean left,
                    Optional<Instant> judgedSetAt) {

    /** The same poured at the same temperatures into a vessel that holds less; empty if no candle is so small. */
    Optional<TableCase> smaller(double fillShare) {
        return PlanVariants.smaller(candle, fillShare)
                .map(c -> ClassCandles.tableCase(c, curing.coolingCase().roomC(),
                        curing.coolingCase().pourC()))
                .filter(table -> table.fault().isEmpty());
    }

    /** Minutes from its pour, 0 or more. */
    double minutesAt(Instant at) {
        return Math.max(0, Duration.between(pouredAt, at).toMillis() / 60_000.0);
    }

    /** When it is ready, of minutes from its pour as they were computed. */
    ReadyWindow computed(MinuteRange range) {
        return new ReadyWindow(after(range.p10()), after(range.p50()), after(range.p90()), ReadyWindow.Basis.COMPUTED);
    }

    /** An instant so many minutes after the pour, to the second; a day for what is not reached within one. */
    Instant after(double minutes) {
        return pouredAt.plusSeconds(Math.round(60 * Math.min(minutes, 24 * 60)));
    }
}
