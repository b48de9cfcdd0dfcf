package benchpace.web.data;

import benchpace.board.Backups;
import benchpace.board.Backups.State;
import benchpace.files.Json;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.data.BackupCard;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Backups for instructors: begun, followed, fetched. */
final class BackupApi {
    private final Backups backups;
    private final Access access;

    BackupApi(Backups backups, Access access) {
        this.backups = backups;
        this.access = access;
    }

    void routes(RoutesConfig routes) {
        routes.post("/api/backup", this::start);
        Reads.route(routes, "/api/backup", this::tell);
        Reads.route(routes, "/data/backup/{name}", this::fetch);
    }

    private void start(Context ctx) {
        access.instructor(ctx);
        backups.start();
        Bodies.send(ctx, 202, json(backups.state()));
    }

    private void tell(Context ctx) {
        access.instructor(ctx);
        Bodies.send(ctx, 200, json(backups.state()));
    }

    private static ObjectNode json(State state) {
        ObjectNode json = Json.object().put("words", BackupCard.words(state));
        if (state instanceof State.Ready ready) {
            return json.put("state", "ready").put("name", ready.name()).put("bytes", ready.made().bytes())
                    .put("url", BackupCard.address(ready));
        }
        return json.put("state", state instanceof State.Making ? "making" : state instanceof State.Failed ? "failed"
                : "none");
    }

    private void fetch(Context ctx) {
        access.instructor(ctx);
        String name = ctx.pathParam("name");
        Path file = backups.ready(name).orElseThrow(() -> new Refused(Problem.notFound(
                "That backup is not here any more: it can be fetched for ten minutes. Make a new one.")));
        try {
            ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
            ctx.header("Content-Length", Long.toString(Files.size(file)));
            ctx.contentType("application/octet-stream").result(Files.newInputStream(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
