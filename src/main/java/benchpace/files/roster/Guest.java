package benchpace.files.roster;

import benchpace.plan.SeatNumber;
import java.util.Optional;

/**
 * Somebody on a list of those who come.
 *
 * @param seat   empty if the list does not say where
 * @param candle the plan's candle, by its id or its name as it was written; empty if none is chosen
 * @param line   where in the text it stands, from 1
 */
public record Guest(Optional<SeatNumber> seat, String name, String party, String candle, String note, long line) { }
