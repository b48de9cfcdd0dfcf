package benchpace.web;

/** An address that a route of the server answers at. */
public final class RouteAddress {
    private RouteAddress() { }

    /** @param route as the server names it @param classId for its class; whatever else it asks for is made up */
    public static String of(String route, String classId) {
        return route.replace("{id}", classId).replace("<file>", "css/base.css").replaceAll("\\{[a-z]+}", "1");
    }
}
