package benchpace.bench.glass;

import benchpace.web.TestBoard;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The instructor's page of a class, or a bare one to compare it with, on a tablet whose processor is slowed ({@code
 * Emulation.setCPUThrottlingRate}). It measures itself: when each tile showed something else, in the browser's own
 * frames, and every long task.
 */
public final class SlowedPage implements AutoCloseable {
    private static final double FINGER_MILLIS = 70;
    private static final double OPENING_MILLIS = 4_000;
    /**
     * Times are ms since 1970 by the machine's clock, the same for all pages. A tile has its answer once its place or
     * its inside has changed; that is on the glass once the frame after it has been drawn, which a task that was asked
     * for within that frame, and that no other goes before, tells.
     */
    private static final String MEASURING = """
            (() => {
              const measured = { taps: [], sent: [], shown: [], tasks: [], frames: [] };
              const now = () => performance.timeOrigin + performance.now();
              window.measured = measured;
              const watch = (type, keep) => new PerformanceObserver((list) => list.getEntries().forEach(keep))
                .observe({ type, buffered: true });
              watch('longtask', ({ startTime, duration }) => measured.tasks.push({ at: startTime, ms: duration }));
              watch('long-animation-frame', (frame) => measured.frames.push(frame));
              addEventListener('pointerup', (event) => {
                const tile = event.target.closest('[data-place]');
                if (!tile) return;
                const at = performance.timeOrigin + event.timeStamp;
                measured.taps.push({ seat: Number(tile.dataset.place), at });
              }, true);
              const { fetch } = window;
              window.fetch = (address, asked) => {
                const seat = asked?.method === 'POST' && JSON.parse(asked.body ?? '{}').seat;
                if (seat) measured.sent.push({ seat, at: now() });
                return fetch(address, asked);
              };
              const seen = (seat) => {
                requestAnimationFrame(() => {
                  scheduler.postTask(() => measured.shown.push({ seat, at: now() }), { priority: 'user-blocking' });
                });
              };
              document.addEventListener('DOMContentLoaded', () => {
                for (const place of document.querySelectorAll('[data-place]')) {
                  new MutationObserver(() => seen(Number(place.dataset.place)))
                    .observe(place, { attributes: true, attributeFilter: ['class'], childList: true, subtree: true });
                }
              });
            })()""";

    /** Every long task with the script that took most of its frame. */
    private static final String TASKS = """
            () => window.measured.tasks.map(({ at, ms }) => {
              const frame = window.measured.frames.find((f) => f.startTime <= at + 1 && f.startTime + f.duration >= at);
              const [longest] = [...(frame?.scripts ?? [])].sort((a, b) => b.duration - a.duration);
              const what = !longest ? 'no script'
                : `${longest.invoker} ${longest.sourceURL.replace(/.*\\/static/, '')} ${longest.sourceFunctionName} `
                  + `${Math.round(longest.duration)} ms, layout ${Math.round(longest.forcedStyleAndLayoutDuration)}`;
              return { at: performance.timeOrigin + at, ms, what };
            })""";

    private static final String MIDDLES = """
            () => [...document.querySelectorAll('[data-place]')]
              .sort((a, b) => a.dataset.place - b.dataset.place)
              .map((place) => place.querySelector('.tile') ?? place).map((tile) => tile.getBoundingClientRect())
              .map(({ x, y, width, height }) => ({ x: x + width / 2, y: y + height / 2 }))""";

    /** @param at ms since 1970 @param ms how long @param what the script that took most of it */
    public record Task(double at, double ms, String what) { }

    /** @param seat whose tile @param at ms since 1970 */
    public record Seen(int seat, double at) { }

    private final BrowserContext context;
    private final Page page;
    private final CDPSession devTools;

    private SlowedPage(Browser browser, int times, List<Cookie> cookies, String address) {
        context = browser.newContext(new Browser.NewContextOptions().setViewportSize(1280, 800).setHasTouch(true)
                .setServiceWorkers(ServiceWorkerPolicy.BLOCK));
        context.addCookies(cookies);
        context.addInitScript(MEASURING);
        page = context.newPage();
        devTools = context.newCDPSession(page);
        slow(times);
        page.navigate(address);
        page.waitForTimeout(OPENING_MILLIS);
    }

    /** @param times so many times slower than the machine from now on */
    public void slow(int times) {
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", times);
        devTools.send("Emulation.setCPUThrottlingRate", rate);
    }

    /** @param times so many times slower than the machine, as it is opened and until it is told otherwise */
    public static SlowedPage of(TestBoard board, Browser browser, String classId, int times) {
        Cookie paired = new Cookie("benchpace", board.instructor()).setUrl(board.uri("/").toString());
        return new SlowedPage(browser, times, List.of(paired),
                board.uri("/classes/" + classId + "/instructor").toString());
    }

    /** The least that a page can do: so many boxes, of which one that is tapped gets another colour. */
    public static SlowedPage bare(Browser browser, int seats, int times) {
        String boxes = IntStream.rangeClosed(1, seats)
                .mapToObj(n -> "<div id='tile-" + n + "' data-place='" + n + "'>" + n + "</div>")
                .collect(Collectors.joining());
        String page = "<!doctype html><style>main{display:grid;grid-template-columns:repeat(8,1fr);gap:8px}"
                + "div{height:90px;border:2px solid;contain:strict}.on{background:green}</style><main>" + boxes
                + "</main><script>addEventListener('click',(e)=>e.target.classList.toggle('on'))</script>";
        return new SlowedPage(browser, times, List.of(), "data:text/html;base64,"
                + Base64.getEncoder().encodeToString(page.getBytes(StandardCharsets.UTF_8)));
    }

    /**
     * Where a finger finds each seat's tile. The page itself is asked: Playwright's locators would leave listeners in
     * it that take as long at each tap as the page does.
     */
    public List<double[]> tiles(int seats) {
        List<Map<String, Object>> middles = entries(MIDDLES);
        return middles.subList(0, seats).stream().map(m -> new double[] {number(m, "x"), number(m, "y")}).toList();
    }

    /** A finger that rests {@value #FINGER_MILLIS} ms on the glass: one that leaves as it comes is none. */
    public void tap(double[] middle) {
        JsonObject finger = new JsonObject();
        finger.addProperty("x", middle[0]);
        finger.addProperty("y", middle[1]);
        touch("touchStart", finger);
        page.waitForTimeout(FINGER_MILLIS);
        touch("touchEnd");
    }

    private void touch(String type, JsonObject... fingers) {
        JsonArray points = new JsonArray();
        for (JsonObject finger : fingers) {
            points.add(finger);
        }
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        devTools.send("Input.dispatchTouchEvent", event);
    }

    public void rest(double millis) {
        page.waitForTimeout(millis);
    }

    public List<Seen> taps() {
        return seen("taps");
    }

    /** When each tap left the page. */
    public List<Seen> sent() {
        return seen("sent");
    }

    /** Each time a tile was drawn as it was not before. */
    public List<Seen> shown() {
        return seen("shown");
    }

    public List<Task> tasks() {
        return entries(TASKS).stream().map(t -> new Task(number(t, "at"), number(t, "ms"), t.get("what").toString()))
                .toList();
    }

    private List<Seen> seen(String list) {
        return entries("() => window.measured." + list).stream()
                .map(s -> new Seen((int) number(s, "seat"), number(s, "at"))).toList();
    }

    @SuppressWarnings("unchecked")
    private List<Map<String, Object>> entries(String which) {
        return (List<Map<String, Object>>) page.evaluate(which);
    }

    private static double number(Map<String, Object> entry, String name) {
        return ((Number) entry.get(name)).doubleValue();
    }

    @Override public void close() {
        context.close();
    }
}
