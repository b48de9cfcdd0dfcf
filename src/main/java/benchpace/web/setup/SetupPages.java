package benchpace.web.setup;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.live.ClassEvent.Place;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.live.Setup;
import benchpace.plan.Candle;
import benchpace.plan.Numbering;
import benchpace.plan.Picture;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.setup.CardsPage;
import benchpace.web.screen.setup.SeatsPage;
import benchpace.web.screen.setup.SetupPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Shell;
import benchpace.words.GuestWords;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** The pages on which a class is set up and corrected, and its place cards. */
public final class SetupPages {
    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Boards boards;
    private final PlanBook plans;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;

    public SetupPages(Boards boards, PlanBook plans, Access access, Screens screens, ZoneId zone) {
        this.boards = boards;
        this.plans = plans;
        this.access = access;
        this.screens = screens;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/classes/new", this::fresh);
        Reads.route(routes, "/classes/{id}/setup", this::change);
        Reads.route(routes, "/classes/{id}/cards", this::cards);
    }

    /** Where a plan is held that does not say where. */
    private String home() {
        return screens.studioOf("").place();
    }

    private static Shell shell(String title, String screen, List<String> sheets) {
        return new Shell(title, screen, sheets, "", "", "UTC", Role.INSTRUCTOR.token(), "");
    }

    // ---- before it begins

    private void fresh(Context ctx) {
        access.instructor(ctx);
        String asked = Optional.ofNullable(ctx.queryParam("plan")).orElse("");
        BookPlan chosen = plans.find(asked).orElseGet(() -> plans.all().iterator().next());
        Plan plan = chosen.plan().orHeldAt(home());
        List<Place> places = IntStream.rangeClosed(1, plan.usualSeats())
                .mapToObj(seat -> new Place(new SeatNumber(seat), "")).toList();
        Setup setup = new Setup(plan, plan.name(), boards.clocks().board(), places);
        Pages.html(ctx, screens.setup(page("", chosen.id(), choices(), setup, "", "")));
    }

    private void change(Context ctx) {
        access.instructor(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        LiveClass live = board.live();
        if (live.begun() || live.closedAt().isPresent()) {
            Pages.html(ctx, screens.seats(seats(board.id(), live)));
            return;
        }
        List<SetupPage.Choice> choices = new ArrayList<>();
        choices.add(new SetupPage.Choice("", live.plan().name() + ", as this class has it"));
        choices.addAll(choices());
        Pages.html(ctx, screens.setup(page(board.id(), "", choices, SetupApi.asItStands(live),
                LOCAL.format(live.startsAt().atZone(zone)), SetupApi.tag(live))));
    }

    private List<SetupPage.Choice> choices() {
        return plans.all().stream().map(plan -> new SetupPage.Choice(plan.id(), plan.plan().name() + ", usually "
                + plan.plan().usualSeats() + " seats")).toList();
    }

    private SetupPage page(String classId, String planId, List<SetupPage.Choice> choices, Setup setup, String begins,
                           String tag) {
        Plan plan = setup.plan();
        ObjectNode carried = Json.object();
        ObjectNode byPlan = carried.putObject("plans");
        plans.all().forEach(known -> carry(known.plan().orHeldAt(home()), byPlan.putObject(known.id())));
        if (!classId.isEmpty()) {
            carry(plan, byPlan.putObject(""));
        }
        ArrayNode roster = carried.putArray("roster");
        setup.seats().forEach(place -> GuestsApi.write(place, roster.addObject()));
        int seats = setup.seats().stream().mapToInt(place -> place.seat().value()).max().orElseThrow();
        String title = classId.isEmpty() ? "Set up a class" : "Set up " + setup.name();
        return new SetupPage(shell(title, "setup", List.of("seating")), classId, choices, planId, setup.name(), begins,
                setup.promisedEnd().map(this::clock).orElse(""), zone.getId(), plan.place(), seats,
                Words.of(plan.table()), Words.of(setup.numbering()), tag, Json.text(carried));
    }

    private String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }

    private static void carry(Plan plan, ObjectNode into) {
        into.put("name", plan.name()).put("seats", plan.usualSeats()).put("place", plan.place())
                .put("table", Words.of(plan.table())).put("numbering", Words.of(Numbering.CLOCKWISE_FROM_LEFT))
                .put("promise", GuestWords.promise(plan.promised().toMinutes()));
        ArrayNode candles = into.putArray("candles");
        plan.candles().forEach(candle -> candles.addObject().put("id", candle.id()).put("name", candle.name()));
    }

    // ---- once it has begun

    private SeatsPage seats(String id, LiveClass live) {
        List<SeatsPage.Row> rows = live.seats().stream().map(seat -> new SeatsPage.Row(seat.number().value(),
                seat.name(), seat.party(), seat.mind(), !seat.finishes().isEmpty() && !seat.hasLeft())).toList();
        List<SetupPage.Choice> candles = live.plan().candles().size() < 2 ? List.of() : live.plan().candles().stream()
                .map(candle -> new SetupPage.Choice(candle.id(), candle.name())).toList();
        return new SeatsPage(shell("Seats and names, " + live.name(), "seats", List.of()), id, live.name(),
                live.closedAt().isPresent(), rows, live.places() < SeatNumber.MOST ? live.places() + 1 : 0, candles);
    }

    private void cards(Context ctx) {
        access.instructor(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        LiveClass live = board.live();
        List<CardsPage.Card> cards = live.seats().stream().filter(seat -> !seat.hasLeft())
                .map(seat -> card(seat, live.plan())).toList();
        Pages.html(ctx, screens.cards(new CardsPage(shell("Place cards, " + live.name(), "cards", List.of())
                .at(screens.headed(board.id(), live.plan().place())), board.id(), live.name(), cards)));
    }

    private static CardsPage.Card card(Seat seat, Plan plan) {
        Optional<Candle> candle = seat.candle().flatMap(plan::candle)
                .or(() -> plan.candles().stream().findFirst());
        boolean choice = plan.candles().size() > 1;
        return new CardsPage.Card(seat.number().value(), seat.name(),
                candle.filter(c -> choice).map(Candle::name).orElse(""),
                candle.map(c -> Drawing.of(Picture.FLAME, c.vessel())).orElse(Drawing.of(Picture.FLAME)));
    }
}
