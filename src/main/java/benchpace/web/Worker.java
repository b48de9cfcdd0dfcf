package benchpace.web;

import benchpace.web.request.Reads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.NotFoundResponse;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The service worker, at an address from which it may look after all pages. It is told which files a page needs and,
 * by a hash of all of them, which release it is of: a new release is a new worker, and throws the old one's files away.
 */
final class Worker {
    private static final Logger LOG = System.getLogger(Worker.class.getName());
    private static final String SCRIPT = "/static/js/worker.js";

    /** Made when it is first asked for, so that no start waits for it. */
    private Optional<String> script = Optional.empty();

    void routes(RoutesConfig routes) {
        Reads.route(routes, "/sw.js", ctx -> ctx.contentType("text/javascript; charset=utf-8")
                .header("Cache-Control", "no-cache").result(made()));
    }

    /** Without its files the board serves its pages all the same; they are not kept for times without it then. */
    private synchronized String made() {
        try {
            String now = script.orElseGet(Worker::script);
            script = Optional.of(now);
            return now;
        } catch (UncheckedIOException e) {
            LOG.log(Level.WARNING, "a file of the pages cannot be read: no device keeps them for when the board is "
                    + "away", e);
            throw new NotFoundResponse();
        }
    }

    private static String script() {
        String listed = Stream.concat(files().stream().filter(f -> !f.equals(SCRIPT)),
                Webjars.addresses().stream()).sorted()
                .map(f -> "'" + f + "'").collect(Collectors.joining(", ", "[", "]"));
        return "const VERSION = '" + version() + "';\nconst FILES = " + listed + ";\n"
                + new String(read(SCRIPT), StandardCharsets.UTF_8);
    }

    private static String version() {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            for (String file : files()) {
                sha256.update(file.getBytes(StandardCharsets.UTF_8));
                sha256.update(read(file));
            }
            return HexFormat.of().formatHex(sha256.digest()).substring(0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The addresses of the board's own scripts, styles, typefaces and pictures, in order; films are not worth it. */
    private static List<String> files() {
        URL root = Worker.class.getResource("/static/js");
        try {
            URLConnection connection = root.openConnection();
            if (connection instanceof JarURLConnection inJar) {
                inJar.setUseCaches(false);
                try (JarFile jar = inJar.getJarFile()) {
                    return wanted(jar.stream().filter(e -> !e.isDirectory()).map(e -> "/" + e.getName()));
                }
            }
            Path folder = Path.of(root.toURI()).getParent();
            try (Stream<Path> all = Files.walk(folder)) {
                return wanted(all.filter(Files::isRegularFile)
                        .map(f -> "/static/" + folder.relativize(f).toString().replace('\\', '/')));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program cannot find its own files", e);
        }
    }

    private static List<String> wanted(Stream<String> paths) {
        return paths.filter(p -> p.startsWith("/static/")).filter(p -> p.matches("[\\w/.-]+\\.(js|css|svg|woff2)"))
                .sorted().toList();
    }

    private static byte[] read(String resource) {
        try (InputStream in = Worker.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new UncheckedIOException(new FileNotFoundException(resource));
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
