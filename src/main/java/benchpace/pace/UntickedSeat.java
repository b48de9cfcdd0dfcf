package benchpace.pace;

/**
 * A seat not ticked when the next led step is about to be opened, and what leaving it behind would cost.
 *
 * @param seat its number
 * @param doneProbability that it is done all the same
 * @param remainingMinutes what it still needs for the present step, on average
 * @param leaveMinutes how much later the last pour would be because of it if the step were opened now, whole minutes
 */
public record UntickedSeat(int seat, double doneProbability, double remainingMinutes, int leaveMinutes) { }
