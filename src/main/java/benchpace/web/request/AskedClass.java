package benchpace.web.request;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import io.javalin.http.Context;

/** The class that an address with {@code {id}} names. */
public final class AskedClass {
    private AskedClass() { }

    /** Of a class that was deleted, perhaps just now. */
    public static Problem deleted() {
        return new Problem(404, "class-deleted", "The class was deleted",
                "The instructor deleted this class. The start page lists those there are.");
    }

    /** @throws Refused if there is none */
    public static ClassBoard of(Context ctx, Boards boards) {
        return boards.find(ctx.pathParam("id")).orElseThrow(() -> boards.wasDeleted(ctx.pathParam("id"))
                ? new Refused(deleted()) : new Refused(new Problem(404, "no-such-class",
                "There is no such class",
                "There is no class of that address; it may have been a demo class. "
                + "The start page lists those there are.")));
    }
}
