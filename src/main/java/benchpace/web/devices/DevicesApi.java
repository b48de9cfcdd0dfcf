package benchpace.web.devices;

import benchpace.files.Json;
import benchpace.store.Session;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.QrCode;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.devices.DevicesPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.StartView;
import benchpace.web.stream.Streams;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** The instructor's view of who has been let in: to sign devices out, and to draw keys and PINs anew. */
public final class DevicesApi {
    private static final int LONGEST_NAME = 40;

    private final Access access;
    private final Streams streams;
    private final Screens screens;
    private final ZoneId zone;
    private final Supplier<String> reachable;

    /** @param reachable the address of the board that phones on the same network can reach */
    public DevicesApi(Access access, Streams streams, Screens screens, ZoneId zone, Supplier<String> reachable) {
        this.access = access;
        this.streams = streams;
        this.screens = screens;
        this.zone = zone;
        this.reachable = reachable;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/devices", this::page);
        Reads.route(routes, "/api/devices", this::list);
        routes.put("/api/devices/{mark}", this::rename);
        routes.delete("/api/devices/{mark}", this::signOut);
        routes.post("/api/devices/sign-out", this::signOutMany);
        routes.post("/api/instructor-keys", this::instructorKey);
        routes.post("/api/helper-keys", ctx -> newKey(ctx, Role.HELPER));
        routes.post("/api/wall-keys", ctx -> newKey(ctx, Role.WALL));
        routes.post("/api/pins", this::newPins);
    }

    private void page(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        Times times = new Times(zone);
        Set<String> looking = streams.devices();
        List<DevicesPage.Row> rows = access.devices().stream().map(device -> new DevicesPage.Row(device.mark(),
                Role.of(device.role()), device.label(), device.name(), times.dayFrom(device.created(), access.now()),
                times.dayFrom(device.lastSeen(), access.now()), looking.contains(device.mark()),
                device.mark().equals(viewer.device()))).toList();
        Pages.html(ctx, screens.devices(new DevicesPage(rows, joining(Role.HELPER), joining(Role.WALL),
                access.pins().isChosen())));
    }

    private StartView.Joining joining(Role role) {
        return role == Role.HELPER
                ? new StartView.Joining(link("helper#helper=" + access.keys().helper()), access.pins().helper())
                : new StartView.Joining(link("wall#wall=" + access.keys().wall()), access.pins().wall());
    }

    private StartView.Link link(String tail) {
        String url = reachable.get() + tail;
        return new StartView.Link(url, QrCode.modules(url));
    }

    private void list(Context ctx) {
        String own = access.instructor(ctx).device();
        Set<String> looking = streams.devices();
        ArrayNode list = Json.mapper().createArrayNode();
        for (Session device : access.devices()) {
            list.addObject().put("mark", device.mark()).put("role", device.role()).put("initials", device.label())
                    .put("name", device.name()).put("pairedAt", device.created().toString())
                    .put("lastSeenAt", device.lastSeen().toString()).put("looking", looking.contains(device.mark()))
                    .put("thisOne", device.mark().equals(own));
        }
        Bodies.send(ctx, 200, list);
    }

    private void rename(Context ctx) {
        access.instructor(ctx);
        String name = Bodies.text(Bodies.object(ctx), "name", LONGEST_NAME).strip();
        if (!access.rename(ctx.pathParam("mark"), name)) {
            throw gone();
        }
        Bodies.send(ctx, 200, Json.object().put("name", name));
    }

    private void signOut(Context ctx) {
        access.instructor(ctx);
        String mark = ctx.pathParam("mark");
        if (signOut(device -> device.mark().equals(mark)) == 0) {
            throw gone();
        }
        ctx.status(204);
    }

    private static Refused gone() {
        return new Refused(Problem.notFound("That device is not paired, or not any more."));
    }

    /** POST {@code {"who": "others"}} or {@code {"who": "all"}}; the latter spends all keys and PINs, too. */
    private void signOutMany(Context ctx) {
        String own = access.instructor(ctx).device();
        String who = Bodies.text(Bodies.object(ctx), "who", 10);
        switch (who) {
            case "others" -> Bodies.send(ctx, 200, Json.object()
                    .put("signedOut", signOut(device -> !device.mark().equals(own))));
            case "all" -> {
                List<String> marks = access.signOutAll();
                marks.forEach(streams::end);
                Bodies.send(ctx, 200, withPins(Json.object().put("signedOut", marks.size())));
            }
            default -> throw new Refused(Problem.unprocessable("\"who\" must be \"others\" or \"all\"."));
        }
    }

    private int signOut(Predicate<Session> which) {
        List<String> marks = access.signOut(which);
        marks.forEach(streams::end);
        return marks.size();
    }

    private void instructorKey(Context ctx) {
        access.instructor(ctx);
        String key = access.keys().askedForInstructorKey();
        Bodies.send(ctx, 201, told(Json.object().put("key", key), link("#key=" + key)));
    }

    private void newKey(Context ctx, Role role) {
        access.instructor(ctx);
        access.keys().renew(role);
        String key = role == Role.HELPER ? access.keys().helper() : access.keys().wall();
        Bodies.send(ctx, 201, told(Json.object().put("key", key), joining(role).link()));
    }

    /** The link with the drawing of its code, so that the page can show it at once. */
    private static ObjectNode told(ObjectNode answer, StartView.Link link) {
        return answer.put("url", link.url()).put("path", link.path()).put("viewBox", link.viewBox());
    }

    private void newPins(Context ctx) {
        access.instructor(ctx);
        access.drawPinsAnew();
        Bodies.send(ctx, 201, withPins(Json.object()));
    }

    /** The instructor's is told once, to the instructor who asked for it, and stands on no page. */
    private ObjectNode withPins(ObjectNode answer) {
        answer.put("helper", access.pins().helper()).put("wall", access.pins().wall());
        return access.pins().isChosen() ? answer : answer.put("instructor", access.pins().instructor());
    }
}
