package benchpace.prep.card;

/** How sure it is where a rule comes from. */
public enum Provenance {
    /** Read in a public text. */
    READ,
    /** Read in a text that quotes it. */
    SECOND_HAND,
    /** From memory: to be checked against the official text before anybody relies on it. */
    MEMORY,
    /** Common practice, no source. */
    PRACTICE
}
