package benchpace.web;

import benchpace.board.Boards;
import benchpace.files.Json;
import benchpace.web.request.Bodies;
import benchpace.web.request.Reads;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Collection;
import java.util.List;
import java.util.function.IntSupplier;
import java.util.function.Supplier;

/** Says to whoever watches the board that it lives, and what of it does not work as it should just now. No login. */
final class Health {
    private final Boards boards;
    private final IntSupplier screens;
    private final List<Supplier<? extends Collection<String>>> degraded;

    /** @param degraded each gives sentences about its own part of the board, none while that is well; without names */
    Health(Boards boards, IntSupplier screens, List<Supplier<? extends Collection<String>>> degraded) {
        this.boards = boards;
        this.screens = screens;
        this.degraded = List.copyOf(degraded);
    }

    void routes(RoutesConfig routes) {
        Reads.route(routes, "/health", this::tell);
    }

    private void tell(Context ctx) {
        ObjectNode health = Json.object().put("status", "ok").put("classes", boards.all().size())
                .put("unreadable", boards.unreadable().size()).put("screens", screens.getAsInt());
        degraded.stream().flatMap(part -> part.get().stream()).forEach(health.putArray("degraded")::add);
        Bodies.send(ctx, 200, health);
    }
}
