package benchpace.board.export;

import benchpace.board.attempt.Model;
import benchpace.board.cooling.SaidRange;
import benchpace.board.export.ExportedClass.Told;
import benchpace.board.view.ClassReport;
import benchpace.files.export.Column;
import benchpace.files.export.Row;
import benchpace.files.export.RowKind;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.Step;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.WhatHeld;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Every figure of a look back as a row, from the same record as the page. */
final class ReportRows {
    private final LiveClass live;
    private final ClassReport report;
    private final List<Row> rows = new ArrayList<>();

    private ReportRows(Told told) {
        this.live = told.live();
        this.report = told.report();
    }

    /** The class itself. */
    static Row head(String id, Told told) {
        return new ReportRows(told).head(id);
    }

    /** What was reckoned of it, kind by kind. */
    static List<Row> of(Told told) {
        ReportRows all = new ReportRows(told);
        all.seats();
        report(all, told.report());
        all.idle();
        all.shelf();
        all.notes();
        all.missing();
        return List.copyOf(all.rows);
    }

    private static void report(ReportRows all, ClassReport report) {
        report.held().ifPresent(held -> {
            all.causes(held);
            all.way(held);
            all.candles(held);
        });
        all.cures();
        all.steps();
        all.flags();
    }

    private Row head(String id) {
        return Row.of(RowKind.CLASS).text(Column.CLASS_ID, id).text(Column.CLASS_NAME, live.name())
                .text(Column.PLAN_ID, live.plan().id().value()).text(Column.PLAN_NAME, live.plan().name())
                .text(Column.PLACE, live.plan().place()).text(Column.TIME_ZONE, report.view().zone().getId())
                .count(Column.SEATS, live.seats().size()).at(Column.STARTS_AT, live.startsAt())
                .at(Column.PROMISED_END_AT, live.promisedEnd())
                .at(Column.PLANNED_READY_AT, report.plannedReady())
                .at(Column.ENDED_AT, report.endedAt()).at(Column.CLOSED_AT, live.closedAt()).row();
    }

    private void add(Row.Filling row) {
        rows.add(row.row());
    }

    private Row.Filling step(Row.Filling row, int index) {
        Step step = live.plan().steps().get(index);
        return row.text(Column.STEP, step.id().value()).text(Column.STEP_NAME, step.name());
    }

    private static String word(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void seats() {
        for (Seat seat : live.seats()) {
            add(Row.of(RowKind.SEAT).count(Column.SEAT, seat.number().value()).text(Column.GUEST, seat.name())
                    .text(Column.PARTY, seat.party()).text(Column.CANDLE, seat.candle().orElse(""))
                    .whether(Column.POUR_MISSING, report.waitedFor().contains(seat.number().value())));
        }
    }

    private void causes(WhatHeld held) {
        held.bySteps().forEach((step, minutes) -> add(step(cause("step", minutes), step)));
        held.bySeats().forEach((seat, minutes) -> add(cause("seat", minutes).count(Column.SEAT, seat)));
        held.byKinds().forEach((kind, minutes) -> add(cause(word(kind), minutes)));
        if (held.awayMinutes() > 0) {
            add(cause("away", held.awayMinutes()));
        }
    }

    private static Row.Filling cause(String what, double minutes) {
        return Row.of(RowKind.CAUSE).text(Column.CAUSE, what).minutes(Column.HELD_MINUTES, minutes);
    }

    private void way(WhatHeld held) {
        for (WhatHeld.Link link : held.links()) {
            Row.Filling row = Row.of(RowKind.WAY).text(Column.CAUSE, word(link.part().kind()))
                    .at(Column.FROM_AT, report.at(link.fromMinutes())).at(Column.TO_AT, report.at(link.toMinutes()))
                    .minutes(Column.TOOK_MINUTES, link.minutes()).minutes(Column.AWAY_MINUTES, link.awayMinutes());
            if (link.plannedMinutes() > 0) {
                row.minutes(Column.PLANNED_MINUTES, link.plannedMinutes());
            }
            if (link.part().seat() > 0) {
                row.count(Column.SEAT, link.part().seat());
            }
            add(step(row, link.part().step()));
        }
    }

    private void candles(WhatHeld held) {
        report.candles().forEach((seat, candle) -> {
            Optional<SaidRange> forecast = report.forecast(seat);
            add(Row.of(RowKind.CANDLE).count(Column.SEAT, seat)
                    .at(Column.POURED_AT, report.at(candle.pouredMinutes()))
                    .at(Column.READY_AT, report.at(candle.readyMinutes()))
                    .text(Column.READY_BY, word(report.readyBy(seat)))
                    .at(Column.READY_FROM_AT, forecast.map(SaidRange::from))
                    .at(Column.READY_UNTIL_AT, forecast.map(SaidRange::until))
                    .whether(Column.LAST, seat == held.lastSeat())
                    .minutes(Column.SPARE_MINUTES, held.spareMinutes().get(seat)));
        });
    }

    private void cures() {
        report.cures().forEach(cure -> add(Row.of(RowKind.CURE).count(Column.SEAT, cure.seat())
                .at(Column.POURED_AT, report.at(cure.pouredMinutes()))
                .at(Column.LIKELY_AT, report.at(cure.likelyMinutes()))
                .at(Column.READY_FROM_AT, report.at(cure.fromMinutes()))
                .at(Column.READY_UNTIL_AT, report.at(cure.untilMinutes()))
                .at(Column.JUDGED_SET_AT, report.at(cure.judgedMinutes()))
                .minutes(Column.LATER_MINUTES, cure.laterMinutes())
                .whether(Column.WITHIN_RANGE, cure.withinRange())));
    }

    private void steps() {
        report.took().forEach(took -> add(step(Row.of(RowKind.STEP), took.step())
                .minutes(Column.PLANNED_MINUTES, took.plannedMinutes()).count(Column.TAPPED_SEATS, took.seats())
                .minutes(Column.LEAST_MINUTES, took.leastMinutes()).minutes(Column.MEDIAN_MINUTES, took.medianMinutes())
                .minutes(Column.MOST_MINUTES, took.mostMinutes()).count(Column.MOST_SEAT, took.mostSeat())));
    }

    private void flags() {
        List<Hindsight.Judged> judged = report.hindsight().map(Hindsight::flags).orElse(List.of());
        for (int i = 0; i < report.flags().size(); i++) {
            FlagSpan flag = report.flags().get(i);
            Row.Filling row = step(Row.of(RowKind.FLAG), flag.step()).count(Column.SEAT, flag.seat())
                    .text(Column.LEVEL, word(flag.level())).at(Column.FROM_AT, report.at(flag.fromMinutes()))
                    .at(Column.TO_AT, report.at(flag.toMinutes()))
                    .minutes(Column.TOOK_MINUTES, flag.toMinutes() - flag.fromMinutes())
                    .at(Column.ANSWERED_AT, Optional.of(flag).filter(FlagSpan::answered)
                            .map(f -> report.at(f.answeredMinutes())));
            if (!judged.isEmpty()) {
                row.text(Column.VERDICT, word(judged.get(i).verdict()))
                        .text(Column.REASON, word(judged.get(i).reason()))
                        .minutes(Column.AFTER_MINUTES, judged.get(i).afterMinutes());
            }
            add(row);
        }
        report.hindsight().map(Hindsight::missed).orElse(List.of()).forEach(missed ->
                add(step(Row.of(RowKind.MISSED), missed.step()).count(Column.SEAT, missed.seat())
                        .minutes(Column.TOOK_MINUTES, missed.tookMinutes())
                        .minutes(Column.MEDIAN_MINUTES, missed.middleMinutes())));
    }

    private void idle() {
        report.idle().forEach(idle -> add(Row.of(RowKind.WAIT).count(Column.SEAT, idle.seat())
                .minutes(Column.WAIT_MINUTES, idle.waitMinutes()).minutes(Column.TAPPED_MINUTES, idle.tappedMinutes())
                .minutes(Column.ASSUMED_MINUTES, idle.assumedMinutes())
                .count(Column.IDLE_MINUTES, idle.idleMinutes())));
    }

    private void shelf() {
        Instant now = report.view().now();
        report.shelf().forEach(entry -> add(Row.of(RowKind.SHELF).count(Column.SEAT, entry.seat().value())
                .text(Column.SHELF_PLACE, entry.place().toString()).at(Column.LEFT_AT, entry.leftAt())
                .at(Column.READY_FROM_AT, entry.readyFrom()).at(Column.COLLECT_BY_AT, entry.collectBy())
                .at(Column.COLLECTED_AT, Optional.of(entry.collectedAt()).filter(at -> entry.collected()))
                .text(Column.SHELF_STATUS, word(entry.status(now)))));
    }

    private void notes() {
        live.notes().forEach(note -> add(Row.of(RowKind.NOTE).at(Column.AT, note.at()).text(Column.TEXT, note.text())));
        live.seats().forEach(seat -> seat.notes().forEach(note -> add(Row.of(RowKind.NOTE)
                .count(Column.SEAT, seat.number().value()).at(Column.AT, note.at()).text(Column.TEXT, note.text()))));
    }

    private void missing() {
        for (Model model : report.missing().models()) {
            add(Row.of(RowKind.MISSING).text(Column.MISSING, word(model)));
        }
    }
}
