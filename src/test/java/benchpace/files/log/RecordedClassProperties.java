package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.ClassEvent;
import benchpace.live.Digest;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Wishes;
import benchpace.live.Wishes.Evening;
import benchpace.live.Wishes.Wish;
import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Every class there can be goes into its file and comes back: with late taps, corrections, and a clock set right. */
class RecordedClassProperties {
    @Provide Arbitrary<Evening> evenings() {
        return Wishes.evenings();
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_class_reads_back_equal(@ForAll("evenings") Evening evening,
            @ForAll @IntRange(min = -500_000, max = 500_000) int seconds) throws IOException {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
            if (live.seq() % 40 == 0) {
                live = shifted(live, Duration.ofSeconds(seconds));
            }
        }

        List<Recorded> read = RecordedClass.read("class.jsonl", new StringReader(RecordedClass.write(live.log())));

        assertThat(read).usingRecursiveFieldByFieldElementComparatorIgnoringFields("commandId").isEqualTo(live.log());
        assertThat(Digest.of(LiveClass.of(read))).isEqualTo(Digest.of(live));
    }

    private static LiveClass shifted(LiveClass live, Duration by) {
        Instant now = live.lastRecordedAt().plus(by);
        return live.apply(new Recorded(live.seq() + 1, "board.clock." + live.seq(), "board", now, now,
                new ClassEvent.ClockShifted(1, by)));
    }
}
