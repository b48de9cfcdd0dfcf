package benchpace.web;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The bytes that a page costs a browser that was never here, as they come over the wire, packed and with their headers:
 * told by the browser itself (Chrome DevTools Protocol, {@code Network.loadingFinished}).
 *
 * @param files each address that was asked for, and its bytes
 * @param stream the bytes of what a live page was told since
 */
record FirstVisit(Map<String, Long> files, long stream) {

    /** @param token of the device; empty for one that nobody paired */
    static FirstVisit to(TestBoard board, Browser browser, String path, String token) {
        try (BrowserContext context = browser.newContext()) {
            if (!token.isEmpty()) {
                context.addCookies(List.of(new Cookie("benchpace", token).setUrl(board.uri("/").toString())));
            }
            Page page = context.newPage();
            CDPSession network = context.newCDPSession(page);
            Map<String, String> asked = new TreeMap<>();
            Map<String, Long> bytes = new TreeMap<>();
            long[] stream = {0};
            network.on("Network.requestWillBeSent", event -> asked.put(id(event), event.getAsJsonObject("request")
                    .get("url").getAsString().substring(board.uri("").toString().length())));
            network.on("Network.dataReceived", event -> {
                if (asked.getOrDefault(id(event), "").endsWith("/stream")) {
                    stream[0] += event.get("encodedDataLength").getAsLong();
                }
            });
            network.on("Network.loadingFinished", event -> bytes.merge(asked.get(id(event)),
                    event.get("encodedDataLength").getAsLong(), Long::sum));
            network.send("Network.enable");
            page.navigate(board.uri(path).toString());
            page.evaluate("document.fonts.ready.then(() => fetch('/favicon.ico')).then(() => 1, () => 1)");
            page.waitForTimeout(500); // what is asked for later is no part of opening it
            bytes.remove("/favicon.ico");
            return new FirstVisit(bytes, stream[0]);
        }
    }

    private static String id(JsonObject event) {
        return event.get("requestId").getAsString();
    }

    long bytes() {
        return files.values().stream().mapToLong(Long::longValue).sum();
    }

    private long ofKind(String ending) {
        return files.entrySet().stream().filter(file -> file.getKey().endsWith(ending)).mapToLong(Map.Entry::getValue)
                .sum();
    }

    @Override public String toString() {
        long faces = ofKind(".woff2");
        return "%7d bytes in %2d files: scripts %5d, styles %5d, typefaces %5d, the rest %5d; by its stream %6d"
                .formatted(bytes(), files.size(), ofKind(".js"), ofKind(".css"), faces,
                        bytes() - ofKind(".js") - ofKind(".css") - faces, stream);
    }
}
