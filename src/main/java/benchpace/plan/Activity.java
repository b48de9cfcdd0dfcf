package benchpace.plan;

import java.time.Duration;
import java.util.Set;

/**
 * Something to do while the wax sets.
 *
 * @param typical       how long it usually takes one seat, above zero and at most 4 h
 * @param longest       what nine seats in ten need at most; not below {@code typical}
 * @param places        how many seats fit at once, 1 to 60
 * @param audience      whether the whole class breaks together or each seat goes at its own pace
 * @param needs         what it asks of a guest's hands and table
 * @param interruptible whether a guest may be called away in the middle
 * @param where         the place in the room, in words; may be empty
 * @param ledBy         who leads it, in words; may be empty
 * @param cue           what to say when it opens; may be empty
 * @param caution       what could hurt, in one sentence; may be empty
 */
public record Activity(ActivityId id, String name, ActivityKind kind, Audience audience, Duration typical,
                       Duration longest, int places, Set<Need> needs, boolean interruptible, String where,
                       String ledBy, String cue, String caution) {

    /** Who takes part at once. */
    public enum Audience { WHOLE_CLASS, OWN_PACE }

    /** What the activity asks for before it can begin. */
    public enum Need { HANDS_FREE, TABLE_CLEAR }

    public Activity {
        Texts.present("the id of an activity", id);
        Texts.required("the name of an activity", name, 60);
        Texts.durationWithin("the typical length of \"" + name + "\"", typical, Duration.ofHours(4));
        Texts.durationWithin("the longest length of \"" + name + "\"", longest, Duration.ofHours(4));
        if (longest.compareTo(typical) < 0) {
            throw new IllegalArgumentException("the longest length of \"" + name + "\" is below its typical one");
        }
        if (places < 1 || places > SeatNumber.MOST) {
            throw new IllegalArgumentException(
                    "\"" + name + "\" must have 1 to " + SeatNumber.MOST + " places, not " + places);
        }
        Texts.present("the kind of \"" + name + "\"", kind);
        Texts.present("the audience of \"" + name + "\"", audience);
        Texts.present("what \"" + name + "\" needs", needs);
        needs = Set.copyOf(needs);
        Texts.line("where", where, 80);
        Texts.line("who leads", ledBy, 80);
        Texts.optional("the cue", cue, 300);
        Texts.optional("the caution", caution, 300);
    }

    /** The last of an evening: each candle is wrapped once it is judged set. */
    public boolean isWrapping() {
        return kind == ActivityKind.WRAPPING;
    }

    /** Whether the whole class breaks for it together. Candles are wrapped one by one, whatever the plan says. */
    public boolean isClassBreak() {
        return audience == Audience.WHOLE_CLASS && !isWrapping();
    }
}
