package benchpace.web.screen.history;

import benchpace.history.ClassFigures;
import benchpace.history.PastClass;
import benchpace.history.Punctuality;
import benchpace.words.FiguresWords;
import benchpace.words.HistoryWords;
import benchpace.words.Times;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One past class.
 *
 * @param about   plan, room and seats
 * @param late    it ended late
 * @param badge   whether it was on time, in words; empty where that is not known
 * @param demo    it was the class to try things in
 * @param figures what it came to, a sentence each
 * @param missing why there is none of it; empty if there is
 * @param open    nobody closed it
 */
public record HistoryRow(String id, String name, String when, String plan, String room, String seats, boolean late,
                         String badge, boolean demo, List<String> figures, String missing, boolean open) {

    static HistoryRow of(PastClass past, Times times) {
        return new HistoryRow(past.id(), past.name(), times.day(past.startsAt()), past.planName(), past.place(),
                HistoryWords.seats(past.seats()),
                past.figures().filter(f -> f.punctuality() == Punctuality.LATE).isPresent(),
                past.figures().map(HistoryWords::badge).orElse(""), past.demo(),
                past.figures().map(f -> sentences(past, f, times)).orElse(List.of()),
                HistoryWords.missing(past.standing()), past.standing() == PastClass.Standing.LEFT_OPEN);
    }

    private static List<String> sentences(PastClass past, ClassFigures figures, Times times) {
        return Stream.of(FiguresWords.ended(figures.ended(), figures.promised(), times),
                figures.ready().map(at -> FiguresWords.ready(figures.readyBy(), at, figures.plannedReady(),
                        Optional.of(figures.ended()), times)).orElseGet(FiguresWords::nonePoured),
                HistoryWords.held(past, figures), FiguresWords.idle(figures.idleSeats(), figures.idleMinutes()),
                FiguresWords.flags(figures.flags()), FiguresWords.cures(figures.cures()),
                HistoryWords.shelved(past.shelved()))
                .filter(s -> !s.isEmpty()).toList();
    }
}
