package benchpace.prep;

/** The parts of a prep sheet, each of which stands or fails alone. */
public enum Part { WAX, LOAD, MELTER, CIRCUIT, TIMETABLE }
