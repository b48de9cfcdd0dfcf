package benchpace.bench.tap;

import java.util.List;
import org.HdrHistogram.Histogram;

/** What the taps of one side took, from the moment the request was written; microseconds inside, ms outside. */
public final class TapTimes {
    private final Histogram acknowledged = new Histogram(3);
    private final Histogram middle = new Histogram(3);
    private final Histogram last = new Histogram(3);
    private final Histogram wholeMiddle = new Histogram(3);
    private final Histogram wholeLast = new Histogram(3);

    /** @param first when each screen knew of it, the earliest first @param whole when each had the complete view */
    void add(TapLine.Answered tap, long[] first, long[] whole) {
        long sent = tap.sentNanos();
        acknowledged.recordValue((tap.answeredNanos() - sent) / 1000);
        middle.recordValue((first[first.length / 2] - sent) / 1000);
        last.recordValue((first[first.length - 1] - sent) / 1000);
        wholeMiddle.recordValue((whole[whole.length / 2] - sent) / 1000);
        wholeLast.recordValue((whole[whole.length - 1] - sent) / 1000);
    }

    /** The one that a question is about, of these. */
    public enum Kind {
        ACKNOWLEDGED("acknowledged"), MIDDLE("middle screen"), LAST("last screen"),
        WHOLE_MIDDLE("complete view, middle screen"), WHOLE_LAST("complete view, last screen");

        /** In words. */
        public final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The board's alone: the floor has nothing to complete. */
        public boolean ofBoardAlone() {
            return this == WHOLE_MIDDLE || this == WHOLE_LAST;
        }
    }

    private Histogram of(Kind kind) {
        return List.of(acknowledged, middle, last, wholeMiddle, wholeLast).get(kind.ordinal());
    }

    public double millis(Kind kind, double percentile) {
        return of(kind).getValueAtPercentile(percentile) / 1000.0;
    }

    public long taps() {
        return acknowledged.getTotalCount();
    }
}
