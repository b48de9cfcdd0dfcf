package benchpace.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.opentest4j.TestAbortedException;

/**
 * Gives tests a real Chromium: the one that {@code CHROMIUM} names, else one on the path. Without one the tests are
 * reported as skipped, in words; where {@code CI=true} that is a failure.
 */
public final class Browsers implements BeforeAllCallback, ParameterResolver {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser");
    /** How long a page may take to come to what a test expects, on a machine that is busy with other tests. */
    private static final double PATIENCE_MILLIS = 30_000;

    /** One browser for all test classes that a process runs; closed with the process's last. */
    private record Running(Playwright playwright, Browser browser) implements AutoCloseable {
        @Override public void close() {
            browser.close();
            playwright.close();
        }
    }

    @Override public void beforeAll(ExtensionContext context) {
        running(context);
    }

    private static Running running(ExtensionContext context) {
        return context.getStore(StoreScope.LAUNCHER_SESSION, Namespace.create(Browsers.class))
                .getOrComputeIfAbsent("browser", key -> start(), Running.class);
    }

    private static Running start() {
        Path chromium = find().orElseThrow(Browsers::missing);
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLIS);
        Playwright playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return new Running(playwright, playwright.chromium().launch(new BrowserType.LaunchOptions()
                .setExecutablePath(chromium)
                .setArgs(List.of("--no-sandbox", "--disable-background-networking", "--no-first-run",
                        "--disable-component-update", "--disable-sync"))));
    }

    private static Optional<Path> find() {
        Stream<String> named = Optional.ofNullable(System.getenv("CHROMIUM")).stream();
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        Stream<String> onPath = Stream.of(path.split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> folder + File.separator + name));
        return Stream.concat(named, onPath).map(Path::of).filter(Files::isExecutable).findFirst();
    }

    private static RuntimeException missing() {
        String words = "No Chromium is on this machine: install the package chromium, or name one with CHROMIUM=/path.";
        return "true".equals(System.getenv("CI")) ? new IllegalStateException(words)
                : new TestAbortedException(words + " The browser tests were skipped.");
    }

    @Override public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return running(context).browser();
    }
}
