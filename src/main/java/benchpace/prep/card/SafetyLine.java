package benchpace.prep.card;

import java.util.Arrays;
import java.util.List;

/** One line of the first-aid and fire card. */
public enum SafetyLine {
    COOL_THE_BURN(Topic.BURN, Provenance.READ),
    OFF_UNLESS_STUCK(Topic.BURN, Provenance.READ),
    LEAVE_WAX_THAT_STICKS(Topic.BURN, Provenance.MEMORY),
    NEVER_ICE(Topic.BURN, Provenance.READ),
    COVER_LOOSELY(Topic.BURN, Provenance.READ),
    GET_HELP(Topic.BURN, Provenance.SECOND_HAND),
    SMOTHER(Topic.FIRE, Provenance.READ),
    NEVER_WATER(Topic.FIRE, Provenance.READ),
    CLASS_B(Topic.FIRE, Provenance.MEMORY),
    LEAVE_AND_CALL(Topic.FIRE, Provenance.PRACTICE),
    CARRY_WHEN_SOLID(Topic.TABLE, Provenance.READ),
    GLOVES_FOR_METAL(Topic.TABLE, Provenance.SECOND_HAND),
    ASK_ABOUT_ALLERGIES(Topic.TABLE, Provenance.PRACTICE),
    CHILDREN_WITH_ADULTS(Topic.TABLE, Provenance.PRACTICE);

    /** How long a burn is cooled under running water, minutes (British Burn Association's campaign). */
    public static final int COOL_MINUTES = 20;

    /** What a line is about. */
    public enum Topic { BURN, FIRE, TABLE }

    private final Topic topic;
    private final Provenance provenance;

    SafetyLine(Topic topic, Provenance provenance) {
        this.topic = topic;
        this.provenance = provenance;
    }

    public Topic topic() {
        return topic;
    }

    public Provenance provenance() {
        return provenance;
    }

    /** The lines about it, in the order in which they are done. */
    public static List<SafetyLine> of(Topic topic) {
        return Arrays.stream(values()).filter(line -> line.topic == topic).toList();
    }
}
