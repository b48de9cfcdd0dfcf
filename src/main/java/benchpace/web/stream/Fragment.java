package benchpace.web.stream;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** One part of a screen as it is sent. @param event its bytes; never changed */
record Fragment(String name, String content, byte[] event) {
    Fragment(String name, String content) {
        this(name, content, EventStream.event(name, "", content).getBytes(StandardCharsets.UTF_8));
    }

    static List<Fragment> of(Map<String, String> parts) {
        return parts.entrySet().stream().map(part -> new Fragment(part.getKey(), part.getValue())).toList();
    }
}
