package benchpace.web.request;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.Watched;
import benchpace.board.playback.Playbacks;
import benchpace.words.PlaybackWords;
import io.javalin.http.Context;

/** The class that an address with {@code {id}} names. */
public final class AskedClass {
    private AskedClass() { }

    /** Of a class that was deleted, perhaps just now. */
    public static Problem deleted() {
        return new Problem(404, "class-deleted", "The class was deleted",
                "The instructor deleted this class. The start page lists those there are.");
    }

    /**
     * The class itself, with all that can be done to it.
     *
     * @throws Refused if there is none; an evening that is played back is none
     */
    public static ClassBoard of(Context ctx, Boards boards) {
        return named(ctx.pathParam("id"), boards);
    }

    /** The same of a class that a body names. */
    public static ClassBoard named(String id, Boards boards) {
        if (Playbacks.isOne(id)) {
            throw new Refused(Problem.of(PlaybackWords.nothingToTap()));
        }
        return boards.find(id).orElseThrow(() -> boards.wasDeleted(id)
                ? new Refused(deleted()) : new Refused(new Problem(404, "no-such-class",
                "There is no such class",
                "There is no class of that address; it may have been a demo class. "
                + "The start page lists those there are.")));
    }

    /** The class, or the evening that is played back, for screens. @throws Refused if there is neither */
    public static Watched watched(Context ctx, Boards boards, Playbacks playbacks) {
        String id = ctx.pathParam("id");
        return Playbacks.isOne(id) ? playbacks.find(id).orElseThrow(AskedClass::noPlayback) : of(ctx, boards);
    }

    /** Of an evening that is not played back, or no longer. */
    public static Refused noPlayback() {
        return new Refused(Problem.of(PlaybackWords.noLonger()));
    }
}
