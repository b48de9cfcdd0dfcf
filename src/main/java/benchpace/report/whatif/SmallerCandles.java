package benchpace.report.whatif;

import benchpace.cure.room.LossTrajectories;
import benchpace.cure.room.RoomFit;
import benchpace.pace.belief.StandardNormal;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * The candles of a class as they were poured and the same in vessels of the same shape that hold less, both solved.
 *
 * @param fillShare of what they held, 0 to 1
 * @param room      what is believed of the room after the class
 * @param candles   by seat number
 */
public record SmallerCandles(double fillShare, RoomFit room, Map<Integer, Both> candles) {
    public SmallerCandles {
        candles = Map.copyOf(candles);
    }

    /** One candle. @param ownSd of its own departure from the model, in ln(loss) */
    public record Both(LossTrajectories poured, LossTrajectories smaller, double ownSd) { }

    /** What the smaller vessels take to set in one way in which it may be, as a share of the others. */
    Drawn drawn(SplittableRandom random) {
        return new Drawn(room.logLossMean() + room.logLossSd() * StandardNormal.draw(random),
                Math.min(1, Math.max(0, room.readyMean() + room.readySd() * StandardNormal.draw(random))));
    }

    /** @param logLoss of the room @param ready the fraction judged so */
    record Drawn(double logLoss, double ready) { }

    /** 1 for a seat whose candle cannot be had smaller. */
    double share(int seat, Drawn drawn, SplittableRandom own) {
        Both both = candles.get(seat);
        if (both == null) {
            return 1;
        }
        double logLoss = drawn.logLoss() + both.ownSd() * StandardNormal.draw(own);
        double was = both.poured().readyMinutes(logLoss, drawn.ready());
        double is = both.smaller().readyMinutes(logLoss, drawn.ready());
        return was > 0 && was < Double.POSITIVE_INFINITY ? Math.min(1, is / was) : 1;
    }
}
