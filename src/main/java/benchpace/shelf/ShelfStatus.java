package benchpace.shelf;

/** How a candle on the shelf stands. */
public enum ShelfStatus { SETTING, READY, OVERDUE, COLLECTED }
