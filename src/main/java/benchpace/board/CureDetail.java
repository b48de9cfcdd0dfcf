package benchpace.board;

/**
 * What a computed clock knows beyond when the candle is ready.
 *
 * @param candle the id of the plan's candle it was computed for
 * @param name   the same in words
 * @param skin   when the top has a skin
 * @param firm   when 95 per cent of the wax is solid
 */
public record CureDetail(String candle, String name, ReadyWindow skin, ReadyWindow firm) { }
