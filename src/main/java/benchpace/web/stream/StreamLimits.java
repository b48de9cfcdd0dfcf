package benchpace.web.stream;

import java.time.Duration;

/**
 * What live connections may take.
 *
 * @param beat    how often a silent stream shows that it lives; half-open connections are found by it
 * @param stalled a reader that takes nothing for so long is dropped; longer than {@code beat}
 * @param most    how many screens may be connected; more than any class has, beyond it somebody is playing
 * @param strangers how many of them may be of devices that nobody has paired; fewer, so that staff always get in
 * @param ofOneAddress how many of those may come from one address; {@link StreamPlaces} says who gives way to whom
 */
public record StreamLimits(Duration beat, Duration stalled, int most, int strangers, int ofOneAddress) {
    public static final StreamLimits USUAL =
            new StreamLimits(Duration.ofSeconds(10), Duration.ofSeconds(20), 150, 60, 12);

    public StreamLimits {
        if (beat.isNegative() || beat.isZero() || stalled.compareTo(beat) <= 0 || most < 1 || strangers > most
                || ofOneAddress > strangers) {
            throw new IllegalArgumentException("a stream is dropped only after a beat was due, and strangers are "
                    + "some of all");
        }
    }
}
