package benchpace.breaks;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;

/** One thing a guest was told: this seat begins this activity at this time. */
public record Announced(SeatNumber seat, ActivityId activity, Instant from) { }
