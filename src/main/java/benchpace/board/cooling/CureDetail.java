package benchpace.board.cooling;

import java.util.Optional;

/**
 * What a computed clock knows beyond when the candle is ready.
 *
 * @param candle the id of the plan's candle it was computed for
 * @param name   the same in words
 * @param skin   when the top has a skin; empty once a hand has decided
 * @param firm   when 95 per cent of the wax is solid; the same
 */
public record CureDetail(String candle, String name, Optional<ReadyWindow> skin, Optional<ReadyWindow> firm) { }
