package benchpace.web.stream;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** One part of a screen as it is sent: made into bytes for the first screen that needs it. Safe for many threads. */
final class Fragment {
    private final String name;
    private final String content;
    private byte[] event;

    Fragment(String name, String content) {
        this.name = name;
        this.content = content;
    }

    static List<Fragment> of(Map<String, String> parts) {
        return parts.entrySet().stream().map(part -> new Fragment(part.getKey(), part.getValue())).toList();
    }

    String name() {
        return name;
    }

    String content() {
        return content;
    }

    /** Its bytes; never changed. */
    synchronized byte[] event() {
        if (event == null) {
            event = EventStream.event(name, "", content).getBytes(StandardCharsets.UTF_8);
        }
        return event;
    }
}
