package benchpace.bench.tap;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The {@link Floor} as a process of its own; it sends as many bytes as it is told to. */
public final class FloorSide extends Side {
    private final TapLine line;
    private String bytes = "";

    public FloorSide(List<String> before, List<String> flags, Path data) throws IOException {
        super(java(before, flags, List.of("-cp", System.getProperty("java.class.path"), Floor.class.getName(),
                data.toString())));
        line = new TapLine(port(), "");
        seq = 1;
    }

    /** From now on a tap brings each screen just so much. */
    void send(Map<ScreenKind, Bytes> wanted) {
        bytes = wanted.entrySet().stream().map(e -> name(e.getKey()) + "=" + e.getValue().first() + "+"
                + e.getValue().whole()).collect(Collectors.joining("&"));
    }

    private static String name(ScreenKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    @Override Screens screens(List<ScreenKind> kinds) throws IOException {
        return Screens.open(port(), "", kinds, kind -> "/stream?kind=" + name(kind));
    }

    @Override TapLine.Answered ask() throws IOException {
        return line.post("/tap?" + bytes, "{\"commandId\":\"t-" + seq + "\"}");
    }

    @Override public void close() throws IOException, InterruptedException {
        line.close();
        super.close();
    }
}
