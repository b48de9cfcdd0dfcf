package benchpace.live;

/** What the rules say to a command. */
public sealed interface Decision {

    /** The event shall be recorded. */
    record Accepted(ClassEvent event) implements Decision { }

    /** Nothing is recorded, for this reason. */
    record Refused(Refusal reason) implements Decision { }
}
