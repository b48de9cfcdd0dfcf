package benchpace.files.export;

/**
 * A column of the table, and the key of the same thing in the JSON. Names bear their unit; times end in {@code At} and
 * are RFC 3339 in UTC. None is ever renamed or dropped, and new ones come last.
 */
public enum Column {
    ROW("row"), CLASS_ID("classId"), CLASS_NAME("className"), PLAN_ID("planId"), PLAN_NAME("planName"), PLACE("place"),
    TIME_ZONE("timeZone"), SEATS("seats"), STARTS_AT("startsAt"), PROMISED_END_AT("promisedEndAt"),
    PLANNED_READY_AT("plannedReadyAt"), ENDED_AT("endedAt"), CLOSED_AT("closedAt"),
    SEQ("seq"), TYPE("type"), AT("at"), RECORDED_AT("recordedAt"), BY("by"), DEVICE("device"), FIELDS("fields"),
    SEAT("seat"), GUEST("guest"), PARTY("party"), CANDLE("candle"), POUR_MISSING("pourMissing"),
    STEP("step"), STEP_NAME("stepName"),
    CAUSE("cause"), HELD_MINUTES("heldMinutes"),
    FROM_AT("fromAt"), TO_AT("toAt"), TOOK_MINUTES("tookMinutes"), PLANNED_MINUTES("plannedMinutes"),
    AWAY_MINUTES("awayMinutes"),
    POURED_AT("pouredAt"), READY_AT("readyAt"), READY_BY("readyBy"), READY_FROM_AT("readyFromAt"),
    READY_UNTIL_AT("readyUntilAt"), LAST("last"), SPARE_MINUTES("spareMinutes"),
    LIKELY_AT("likelyAt"), JUDGED_SET_AT("judgedSetAt"), LATER_MINUTES("laterMinutes"), WITHIN_RANGE("withinRange"),
    TAPPED_SEATS("tappedSeats"), LEAST_MINUTES("leastMinutes"), MEDIAN_MINUTES("medianMinutes"),
    MOST_MINUTES("mostMinutes"), MOST_SEAT("mostSeat"),
    LEVEL("level"), ANSWERED_AT("answeredAt"), VERDICT("verdict"), REASON("reason"), AFTER_MINUTES("afterMinutes"),
    WAIT_MINUTES("waitMinutes"), TAPPED_MINUTES("tappedMinutes"), ASSUMED_MINUTES("assumedMinutes"),
    IDLE_MINUTES("idleMinutes"),
    SHELF_PLACE("shelfPlace"), COLLECT_BY_AT("collectByAt"), LEFT_AT("leftAt"), COLLECTED_AT("collectedAt"),
    SHELF_STATUS("shelfStatus"),
    TEXT("text"), MISSING("missing");

    private final String key;

    Column(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
