package benchpace.web.request;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Addresses that are only read: HEAD tells the same as GET, without the content (RFC 9110, 9.3.2). */
public final class Reads {
    private Reads() { }

    public static void route(RoutesConfig routes, String address, Handler handler) {
        routes.get(address, handler);
        routes.head(address, handler);
    }
}
