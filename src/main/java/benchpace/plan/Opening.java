package benchpace.plan;

/** Who decides that a step begins. */
public enum Opening {
    /** It opens for everyone when the instructor opens it; nobody goes ahead. */
    LED,
    /** A seat that has finished the step before may start. */
    FREE
}
