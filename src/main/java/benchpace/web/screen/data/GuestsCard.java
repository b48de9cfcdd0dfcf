package benchpace.web.screen.data;

import benchpace.board.Forgetting;
import benchpace.board.view.NamesDue;
import benchpace.board.view.NamesDue.Outlook;
import benchpace.words.ForgettingWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * How long guests' names are kept.
 *
 * @param rule     what is in force, in a sentence
 * @param outlook  how many classes are waiting for it, in a sentence or two; may be empty
 * @param days     what stands in the field: the days in force, else those proposed
 * @param on       whether names are forgotten by age
 * @param coming   the next classes to go
 * @param more     how many go after those
 * @param goes     what goes and what stays, in a sentence or two
 * @param cautions what still holds names that the board does not clear by itself, or not yet
 */
public record GuestsCard(String rule, String outlook, int days, boolean on, List<Row> coming, int more,
                         String goes, List<String> cautions) {
    private static final int SHOWN = 12;

    /** One class. */
    public record Row(String classId, String name, String when) { }

    /**
     * As it stands.
     *
     * @param failing what could not be erased when it was due, a sentence each
     * @param kept    the names of folders with copies of damaged files
     */
    public static GuestsCard of(Forgetting forgetting, List<String> failing, List<String> kept, Instant now,
                                Times times) {
        OptionalInt days = forgetting.days();
        Optional<Outlook> outlook = days.isEmpty() ? Optional.empty()
                : Optional.of(forgetting.outlook(days.getAsInt()));
        List<NamesDue> all = outlook.stream().flatMap(o -> Stream.concat(o.now().stream(), o.later().stream()))
                .toList();
        Stream<String> unswept = forgetting.toSweep() ? Stream.of(ForgettingWords.toSweep()) : Stream.of();
        Stream<String> copies = kept.isEmpty() ? Stream.of() : Stream.of(ForgettingWords.kept(kept));
        return new GuestsCard(ForgettingWords.rule(days),
                ForgettingWords.outlook(outlook, forgetting.forgotten(), times),
                days.orElse(Forgetting.PROPOSED_DAYS), days.isPresent(),
                all.stream().limit(SHOWN).map(due -> new Row(due.classId(), due.name(),
                        ForgettingWords.when(due, now, times))).toList(), Math.max(0, all.size() - SHOWN),
                ForgettingWords.inShort(), Stream.of(failing.stream(), unswept, copies).flatMap(told -> told).toList());
    }
}
