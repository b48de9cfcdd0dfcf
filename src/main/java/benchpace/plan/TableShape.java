package benchpace.plan;

/** How the places stand in the room, seen from the instructor. */
public enum TableShape { LONG_TABLE, TWO_TABLES, HORSESHOE, ROWS, ROUNDS }
