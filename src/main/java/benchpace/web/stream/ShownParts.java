package benchpace.web.stream;

import benchpace.board.view.MadeView;
import java.io.ByteArrayOutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What one screen was sent last, so that only what changed is sent again. Of that screen's own thread. */
final class ShownParts {
    private final LiveScreen screen;
    private final Map<String, String> last = new HashMap<>();
    private long computed;

    /** Drawn once for all screens of one key. */
    private record Drawn(Object key, boolean all) { }

    ShownParts(LiveScreen screen) {
        this.screen = screen;
    }

    /** The events of the parts that are not as they were. What is computed is drawn only if it was computed anew. */
    void add(MadeView made, ByteArrayOutputStream events) {
        boolean all = made.computed() > computed;
        computed = made.computed();
        List<Fragment> shared = made.once(new Drawn(screen.key(made.view()), all),
                () -> Fragment.of(screen.shared(made.view(), all)));
        shared.forEach(part -> add(part, events));
        Fragment.of(screen.own(made.view())).forEach(part -> add(part, events));
    }

    /** The same of what it shows besides. */
    void addBeside(ByteArrayOutputStream events) {
        Fragment.of(screen.beside()).forEach(part -> add(part, events));
    }

    private void add(Fragment part, ByteArrayOutputStream events) {
        if (!part.content().equals(last.put(part.name(), part.content()))) {
            events.writeBytes(part.event());
        }
    }
}
