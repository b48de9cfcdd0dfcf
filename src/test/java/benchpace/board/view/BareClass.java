package benchpace.board.view;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PresentStep;
import benchpace.board.pacing.TurnsAt;
import benchpace.board.waiting.WaitView;
import benchpace.live.LiveClass;
import benchpace.live.Standing;
import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What screens show of a class by its rules alone, nobody's pace judged and no wait planned: quick to make. */
public record BareClass(LiveClass live, ClassView.NowView present, Optional<ClassView.NextView> next,
                        List<SeatView> seats, KnownClass known, Map<SeatNumber, CandleClock> clocks) {

    public static BareClass of(LiveClass live, Instant now) {
        Map<SeatNumber, CandleClock> clocks = new PlanCureClock().cooling("bare", live, now).clocks();
        Pace pace = new Pace(Map.of(), Map.of(), List.of(), List.of(), null, Optional.empty(), Optional.empty());
        Map<SeatNumber, Standing> standings = new TreeMap<>();
        live.seats().forEach(s -> standings.put(s.number(), live.progress().standing(s)));
        StepViews steps = new StepViews(live, standings);
        List<SeatView> seats = new SeatViews(live, clocks, pace, WaitView.NONE, standings,
                SeatingChart.of(live.plan().table(), live.places(), live.setup().numbering()), TurnsAt.of(live, now),
                now).all();
        boolean mayBeFirm = live.seats().stream().filter(s -> s.makesCandle()).map(s -> clocks.get(s.number()))
                .anyMatch(c -> c != null && c.mayBeReady(now));
        ClassView.NowView present = new NowViews(live, steps, seats)
                .of(Stages.of(live, now), PresentStep.of(live, mayBeFirm, now));
        return new BareClass(live, present, new NextViews(live, standings, steps, pace).next(), seats,
                KnownClass.of(live, clocks), clocks);
    }
}
