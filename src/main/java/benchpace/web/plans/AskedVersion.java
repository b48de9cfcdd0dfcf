package benchpace.web.plans;

import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import io.javalin.http.Context;

/** The version of a plan that an address with {@code {number}} names. */
final class AskedVersion {
    private AskedVersion() { }

    static int number(Context ctx) {
        String text = ctx.pathParam("number");
        if (!text.matches("[1-9]\\d{0,8}")) {
            throw new Refused(Problem.notFound("A version is named by its number, such as 3."));
        }
        return Integer.parseInt(text);
    }
}
