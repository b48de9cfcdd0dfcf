package benchpace.web.screen.prep;

import benchpace.prep.card.DocumentItem;
import benchpace.prep.card.LabelFigures;
import benchpace.prep.card.LabelItem;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.sheet.PrepSheet;
import benchpace.web.screen.prep.PrepItem.OnList;
import benchpace.words.Phrases;
import benchpace.words.prep.LabelWords;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * What to look up in the makers' documents and on labels.
 *
 * @param regions of which one is chosen, for the whole board
 * @param figures of each candle's label there
 */
public record ChecksPanel(List<ListLine> documents, List<Choice> regions, String verdict, List<String> figures,
                          List<ListLine> labels, boolean ticks, boolean mayChoose) {

    /** A region to choose. */
    public record Choice(String id, String name, boolean chosen) { }

    static ChecksPanel of(PrepGiven given, PrepSheet sheet) {
        LabelRegion region = given.region();
        return new ChecksPanel(
                Stream.of(DocumentItem.values()).map(i -> line(i, LabelWords.of(i))).toList(),
                Arrays.stream(LabelRegion.values())
                        .map(r -> new Choice(PrepItem.token(r), LabelWords.region(r), r == region)).toList(),
                LabelWords.NO_VERDICT,
                sheet.candles().stream().map(c -> c.candle().name() + ": "
                        + LabelWords.of(LabelFigures.of(c.candle()), region) + ".").toList(),
                LabelItem.of(region).stream().map(i -> line(i, Phrases.sentence(LabelWords.weight(i.weight())) + ": "
                        + LabelWords.of(i))).toList(), given.live(), given.viewer().instructor());
    }

    private static ListLine line(Enum<?> item, String words) {
        return ListLine.of(OnList.CHECK, PrepItem.token(item), words, "");
    }
}
