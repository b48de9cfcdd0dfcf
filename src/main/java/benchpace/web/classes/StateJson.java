package benchpace.web.classes;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.CureDetail;
import benchpace.board.cooling.ReadyWindow;
import benchpace.board.cooling.RoomView;
import benchpace.board.cooling.SaidRange;
import benchpace.board.pacing.HomeOdds;
import benchpace.board.pacing.HomeTime;
import benchpace.board.pacing.SeatFlag;
import benchpace.board.pacing.TurnsAt;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.web.screen.instructor.HomeLine;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.EventWords;
import benchpace.words.FitWords;
import benchpace.words.FlagWords;
import benchpace.words.HomeWords;
import benchpace.words.MissingWords;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;

/** The view of a class as JSON. */
public final class StateJson {
    private StateJson() { }

    /** @param viewer who asks: what can be taken back is what was tapped on the same device */
    public static ObjectNode of(ClassView view, Viewer viewer) {
        ObjectNode state = Json.object()
                .put("id", view.id()).put("name", view.name()).put("place", view.place())
                .put("seq", view.seq()).put("now", view.now().toString())
                .put("startsAt", view.startsAt().toString()).put("status", Words.of(view.stage()));
        view.steps().forEach(s -> steps(state).addObject()
                .put("id", s.id()).put("name", s.name()).put("kind", Words.of(s.kind()))
                .put("opening", Words.of(s.opening())).put("open", s.open())
                .put("openedAt", text(s.openedAt())).put("plannedMinutes", s.planned().toSeconds() / 60.0)
                .put("finished", s.finished()));
        ArrayNode seats = state.putArray("seats");
        view.seats().forEach(s -> seats.add(seat(s)));
        turns(state.putArray("turns"), view);
        ArrayNode flags = state.putArray("flags");
        view.help().forEach(h -> flag(flags.addObject().put("seat", h.seat()), h.flag())
                .put("helper", h.helper().orElse(null)));
        state.set("forecast", forecast(view));
        state.set("room", room(view.room()));
        view.cure().range().filter(r -> view.cure().allPoured()).ifPresentOrElse(r -> state.putObject("cure")
                .put("basis", Words.of(r.basis())).put("readyFrom", r.from().toString())
                .put("readyAt", text(view.cure().likely())).put("readyUntil", r.until().toString()),
                () -> state.putNull("cure"));
        view.next().ifPresentOrElse(
                n -> n.leavesBehind().forEach(state.putObject("next").put("step", n.step().id())
                        .put("name", n.step().name()).putArray("leavesBehind")::add),
                () -> state.putNull("next"));
        view.next().ifPresent(n -> {
            ArrayNode unticked = ((ObjectNode) state.get("next")).putArray("unticked");
            n.rows().forEach(row -> unticked.addObject().put("seat", row.seat()).put("leaveMinutes", row.leaveMinutes())
                    .put("remainingMinutes", row.remainingMinutes()).put("doneProbability", row.doneProbability()));
        });
        state.put("guestsMayTell", view.guestsMayTell());
        state.put("step", view.present().step().map(ClassView.StepView::id).orElse(null))
                .put("stepSince", text(view.present().since()));
        view.present().notDone().forEach(state.putArray("notDone")::add);
        ArrayNode earlier = state.putArray("earlier");
        view.present().earlier().forEach(e -> e.seats().forEach(earlier.addObject().put("step", e.step())
                .put("starts", e.starts()).putArray("seats")::add));
        state.put("silenceMinutes", view.silence().map(d -> d.toMinutes()).orElse(null));
        state.set("wait", WaitJson.of(view));
        state.put("missing", MissingWords.sentence(view.missing()));
        view.undoOn(viewer.device()).ifPresent(u -> state.putObject("undo").put("seq", u.seq())
                .put("words", EventWords.of(view.plan(), u.event())));
        return state;
    }

    private static ObjectNode flag(ObjectNode node, SeatFlag flag) {
        return node.put("level", Words.of(flag.level())).put("reason", FlagWords.reason(flag))
                .put("minutesOver", flag.minutesOver()).put("priceMinutes", flag.priceMinutes());
    }

    /** Whose turn it is where a step serves only some seats at once. */
    private static void turns(ArrayNode turns, ClassView view) {
        for (TurnsAt at : view.turns()) {
            ObjectNode node = turns.addObject().put("step", at.step().id().value()).put("what", at.what())
                    .put("through", at.through().toString());
            at.served().forEach(node.putArray("served")::add);
            at.waiting().forEach(node.putArray("waiting")::add);
        }
    }

    private static ArrayNode steps(ObjectNode state) {
        return state.withArray("steps");
    }

    private static ObjectNode seat(SeatView seat) {
        ObjectNode node = Json.object()
                .put("seat", seat.seat()).put("name", seat.name()).put("party", seat.party())
                .put("note", seat.mind())
                .put("step", seat.stepId().isEmpty() ? null : seat.stepId())
                .put("state", seat.mark().token()).put("since", seat.since().toString())
                .put("countFrom", seat.countFrom().toString()).put("canFinish", seat.canFinish());
        seat.finished().forEach(node.putArray("finished")::add);
        seat.gaps().forEach(node.putArray("gaps")::add);
        Optional<CandleClock> candle = seat.candle();
        node.put("pouredAt", text(seat.pouredAt()))
                .put("readyFrom", text(candle.map(c -> c.said().from())))
                .put("readyAt", text(candle.map(c -> c.ready().likely())))
                .put("readyUntil", text(candle.map(c -> c.said().until())))
                .put("readyBasis", candle.map(c -> Words.of(c.ready().basis())).orElse(null))
                .put("candle", candle.flatMap(CandleClock::detail).map(CureDetail::candle).orElse(null))
                .put("judgedSetAt", text(candle.flatMap(CandleClock::judgedSetAt)))
                .put("flag", seat.flag().map(SeatFlag::level).map(Words::of).orElse(null))
                .put("helper", seat.helper().orElse(null))
                .put("sharesWith", seat.sharesWith().orElse(null))
                .put("guestSaysDone", seat.hint())
                .put("turnsBefore", seat.before().orElse(null));
        seat.eased().ifPresentOrElse(eased -> flag(node.putObject("eased"), eased.flag())
                .put("helper", eased.helper()).put("at", eased.at().toString()), () -> node.putNull("eased"));
        Optional<CureDetail> detail = candle.flatMap(CandleClock::detail);
        window(node, "skin", detail.flatMap(CureDetail::skin));
        window(node, "firm", detail.flatMap(CureDetail::firm));
        return node;
    }

    private static void window(ObjectNode node, String name, Optional<ReadyWindow> window) {
        Optional<SaidRange> said = window.map(SaidRange::of);
        node.put(name + "From", text(said.map(SaidRange::from)))
                .put(name + "At", text(window.map(ReadyWindow::likely)))
                .put(name + "Until", text(said.map(SaidRange::until)));
    }

    private static ObjectNode room(RoomView room) {
        ObjectNode node = Json.object().put("computed", !room.candles().isEmpty())
                .put("fit", room.refit().map(FitWords::of).orElse(""))
                .put("roomCelsius", room.room().map(RoomView.Warmth::celsius).orElse(null))
                .put("pourCelsius", room.pour().map(RoomView.Warmth::celsius).orElse(null));
        ArrayNode candles = node.putArray("candles");
        room.candles().forEach(c -> candles.addObject().put("id", c.id()).put("name", c.name()));
        return node;
    }

    private static ObjectNode forecast(ClassView view) {
        HomeTime home = view.home();
        return Json.object().put("p10", home.p10().toString()).put("p50", home.p50().toString())
                .put("p90", home.p90().toString()).put("promised", home.promised().toString())
                .put("driver", HomeWords.driver(home)).put("basis", HomeWords.basis(home))
                .put("promise", Words.of(home.promise()))
                .put("keptProbability", home.odds().map(HomeOdds::kept).orElse(null))
                .put("lateProbability", home.odds().map(HomeOdds::late).orElse(null))
                .put("words", HomeLine.of(view, new Times(view.zone())).sentence());
    }

    private static String text(Optional<Instant> instant) {
        return instant.map(Instant::toString).orElse(null);
    }
}
