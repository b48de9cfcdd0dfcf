package benchpace.plan;

import java.time.Duration;
import java.util.Optional;

/**
 * One step of a class.
 *
 * @param name      what it is called at the table, at most 60 characters
 * @param planned   the time it should take one seat (or, for a talk, its time box); above 0, at most 8 h
 * @param allowance how far over {@code planned} a seat may go before the plan's own rule speaks up; 0 to 2 h
 * @param say       the cue: one or two sentences to say aloud; may be empty
 * @param caution   what could hurt in this step; may be empty
 * @param wall      the sentence guests read on the wall screen; may be empty
 * @param picture   what is drawn beside it; empty for what its kind usually shows
 * @param stations  what serves the seats, if it cannot serve all at once; only a step that the seats do has them
 */
public record Step(StepId id, String name, StepKind kind, Opening opening, Duration planned, Duration allowance,
                   String say, String caution, String wall, Optional<Picture> picture,
                   Optional<Stations> stations) {
    public Step {
        Texts.present("the id of a step", id);
        Texts.required("the name of a step", name, 60);
        Texts.durationWithin("the planned length of \"" + name + "\"", planned, Duration.ofHours(8));
        Texts.present("the kind of \"" + name + "\"", kind);
        Texts.present("the opening of \"" + name + "\"", opening);
        Texts.present("the allowance of \"" + name + "\"", allowance);
        if (allowance.isNegative() || allowance.compareTo(Duration.ofHours(2)) > 0) {
            throw new IllegalArgumentException("the allowance of \"" + name + "\" must be 0 to 120 minutes");
        }
        Texts.optional("the cue of \"" + name + "\"", say, 400);
        Texts.optional("the caution of \"" + name + "\"", caution, 400);
        Texts.optional("the wall sentence of \"" + name + "\"", wall, 200);
        Texts.present("the picture of \"" + name + "\"", picture);
        stations.ifPresent(served -> requireServed(name, kind, planned, served));
    }

    /** A step at which nobody waits for a turn. */
    public Step(StepId id, String name, StepKind kind, Opening opening, Duration planned, Duration allowance,
                String say, String caution, String wall) {
        this(id, name, kind, opening, planned, allowance, say, caution, wall, Optional.empty(), Optional.empty());
    }

    /** The same, opened otherwise. */
    public Step opened(Opening other) {
        return new Step(id, name, kind, other, planned, allowance, say, caution, wall, picture, stations);
    }

    /** The same, of another length. @param other above 0; at most 8 h */
    public Step lasting(Duration other) {
        return new Step(id, name, kind, opening, other, allowance, say, caution, wall, picture, stations);
    }

    /** The same, served by other stations, or by none. */
    public Step served(Optional<Stations> others) {
        return new Step(id, name, kind, opening, planned, allowance, say, caution, wall, picture, others);
    }

    /** What is drawn beside it. */
    public Picture drawn() {
        return picture.orElse(kind.picture());
    }

    private static void requireServed(String name, StepKind kind, Duration planned, Stations served) {
        if (!kind.needsTap()) {
            throw new IllegalArgumentException("nobody waits for a turn at \"" + name + "\": it is not done by seats");
        }
        if (served.each().compareTo(planned) > 0) {
            throw new IllegalArgumentException("a seat cannot keep " + served.what() + " longer than \"" + name
                    + "\" takes it");
        }
    }

    /**
     * How long so many seats take for it, if each takes as long as planned and no station idles: the last of those who
     * wait for a turn decides.
     *
     * @param seats 1 or more
     */
    public Duration onPaper(int seats) {
        return stations.map(served -> served.forAll(seats).minus(served.each()).plus(planned)).orElse(planned);
    }

    public boolean led() {
        return opening == Opening.LED;
    }

    public boolean needsTap() {
        return kind.needsTap();
    }
}
