package benchpace.web.classes;

import benchpace.board.Mailbox;
import benchpace.board.Watched;
import benchpace.board.cooling.CutAway;
import benchpace.board.view.ClassView;
import benchpace.live.LiveClass;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;

/** What a screen between two classes looks at: the board's time, and nothing that could ever be shown of a class. */
final class NoClass implements Watched {
    private final InstantSource clock;

    NoClass(InstantSource clock) {
        this.clock = clock;
    }

    @Override public String id() {
        return "none";
    }

    @Override public LiveClass live() {
        throw new IllegalStateException("no class is looked at");
    }

    @Override public Instant now() {
        return clock.instant();
    }

    @Override public ClassView view() {
        throw new IllegalStateException("no class is looked at");
    }

    @Override public Optional<CutAway> cutAway(int seat) {
        return Optional.empty();
    }

    /** Nothing is ever put in it; its screen looks at once at what is told beside a class. */
    @Override public Mailbox subscribe() {
        Mailbox mailbox = new Mailbox(closed -> { });
        mailbox.nudge();
        return mailbox;
    }

    @Override public boolean isDeleted() {
        return false;
    }
}
