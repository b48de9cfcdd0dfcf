package benchpace.web.screen.shelf;

import benchpace.board.cooling.CandleClock;
import benchpace.shelf.ShelfPlace;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.ShelfTag;
import benchpace.words.Times;
import java.time.Instant;
import java.util.List;

/**
 * The dialogue with which a seat leaves before its candle is set.
 *
 * @param places    free ones, the suggested first; none if the shelf is full
 * @param claim     a fresh claim word
 * @param readyFrom in words, with the shop's margin
 * @param collectBy the shop's usual last day, as a date field wants it
 * @param candle    when it is ready, was to be, or was judged, in words
 * @param settled   the candle was found firm by hand and may go home
 */
public record LeaveSheet(int seat, String name, String candle, List<ShelfPage.Place> places, String claim,
                         String readyFrom, String collectBy, boolean settled, boolean left, List<String> cautions) {

    public static LeaveSheet of(int seat, String name, boolean left, CandleClock candle, Instant readyFrom,
                                Instant collectBy, List<ShelfPlace> places, String claim, Instant now, Times times) {
        String words = Phrases.sentence(CureWords.stands(candle, now, times));
        return new LeaveSheet(seat, name, words + ".", places.stream().map(ShelfPage::place).toList(), claim,
                times.day(readyFrom), collectBy.atZone(times.zone()).toLocalDate().toString(),
                candle.settled(), left, ShelfTag.CAUTIONS);
    }
}
