/**
 * How the plan is made: activities and class breaks are fitted into the time between each seat's pour and its candle,
 * so that every place is used by one seat at a time, nobody starts what would outlast their candle, and minutes with
 * nothing to do are few.
 *
 * <p>Start at {@link benchpace.breaks.search.WaitPlanner}. {@code Timeline} turns instants into whole minutes, {@code
 * StripSearch} finds one seat's best strip beside the others', {@code StripSharing} shares the places among the seats
 * and {@code PlanSearch} chooses when class breaks begin.
 */
package benchpace.breaks.search;
