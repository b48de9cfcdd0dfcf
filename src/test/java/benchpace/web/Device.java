package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Dialog;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.net.URI;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;

/** A tablet, a phone or a wall screen: a browser of its own, which remembers every complaint and every request. */
public final class Device implements AutoCloseable {
    private final TestBoard board;
    private final BrowserContext context;
    private Page page;
    private int port;
    private boolean refusalsExpected;
    private boolean axeExpected;
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final List<String> requests = new CopyOnWriteArrayList<>();
    private final List<Response> refusals = new CopyOnWriteArrayList<>();

    private Device(TestBoard board, Browser browser, int width, int height, boolean touch,
                   ServiceWorkerPolicy workers) {
        this.board = board;
        this.port = board.port();
        context = browser.newContext(new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(touch)
                .setServiceWorkers(workers));
        context.setDefaultTimeout(20_000);
        context.onRequest(this::requested);
        page = newTab();
    }

    private Page newTab() {
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            // a network that is away is no fault of the page
            if (message.type().equals("error") && !message.text().contains("net::ERR_")
                    && !message.text().equals("[object Event]")
                    && !(refusalsExpected && message.text().contains("responded with a status of 4"))
                    && !(axeExpected && message.text().startsWith("Applying inline style violates"))) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onResponse(response -> {
            if (response.status() >= 400) {
                refusals.add(response);
            }
        });
        page.onDialog(Dialog::accept); // a page with unsent taps asks before it is left
        return page;
    }

    /** The tab is closed, with all that ran in it, and another is opened. */
    public Device inAnotherTab() {
        page.close();
        page = newTab();
        return this;
    }

    public static Device tablet(TestBoard board, Browser browser) {
        return new Device(board, browser, 1280, 800, true, ServiceWorkerPolicy.BLOCK);
    }

    /** One whose pages are kept by the board's service worker. */
    public static Device keeping(TestBoard board, Browser browser) {
        return new Device(board, browser, 1280, 800, true, ServiceWorkerPolicy.ALLOW);
    }

    public static Device phone(TestBoard board, Browser browser) {
        return new Device(board, browser, 390, 844, true, ServiceWorkerPolicy.BLOCK);
    }

    public static Device wall(TestBoard board, Browser browser) {
        return new Device(board, browser, 1920, 1080, false, ServiceWorkerPolicy.BLOCK);
    }

    private void requested(Request request) {
        if (!request.url().startsWith("data:") && !request.url().startsWith("about:")) {
            requests.add(request.url());
        }
    }

    /** Carries a token that was given out before. */
    public Device pairedBy(String token) {
        context.addCookies(List.of(new Cookie("benchpace", token).setUrl(board.uri("/").toString())));
        return this;
    }

    /** Reaches the board by way of another port. */
    public Device through(int port) {
        this.port = port;
        return this;
    }

    /** Axe-core lays style elements of its own into shadow trees, which the page's policy refuses and tells. */
    public Device expectingAxeInShadowTrees() {
        axeExpected = true;
        return this;
    }

    /** The browser itself notes every refusal as an error; here some are part of the story. */
    public Device expectingRefusals() {
        refusalsExpected = true;
        return this;
    }

    /** Runs before every page's own scripts. */
    public Device withScript(String script) {
        context.addInitScript(script);
        return this;
    }

    /** Opens an address and, if it is a live page, waits until its stream is open. */
    public Device at(String path) {
        page.navigate("http://127.0.0.1:" + port + path);
        return this;
    }

    public Page page() {
        return page;
    }

    public Locator find(String selector) {
        return page.locator(selector);
    }

    public void offline(boolean offline) {
        context.setOffline(offline);
    }

    public void assertNoComplaint() {
        assertThat(complaints).as(() -> "console of " + page.url() + refused()).isEmpty();
    }

    /** The browser only notes that something was refused: what was asked, and what was answered. */
    private String refused() {
        return refusals.stream().map(response -> "\n" + response.request().method() + " " + response.url() + " "
                + response.request().postData() + " -> " + response.status() + " " + response.text())
                .collect(Collectors.joining());
    }

    void assertStayedHere() {
        assertThat(requests).isNotEmpty().allMatch(url -> URI.create(url).getAuthority()
                .equals("127.0.0.1:" + port), "goes to the board");
    }

    @Override public void close() {
        context.close();
    }
}
