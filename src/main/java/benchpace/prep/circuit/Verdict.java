package benchpace.prep.circuit;

/** What the sum says of a circuit. */
public enum Verdict { FITS, CLOSE, OVER }
