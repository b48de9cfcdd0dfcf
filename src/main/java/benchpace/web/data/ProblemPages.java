package benchpace.web.data;

import benchpace.board.ProblemReports;
import benchpace.board.view.ProblemFacts;
import benchpace.files.TextZip;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Reads;
import benchpace.web.screen.Screens;
import benchpace.web.screen.data.ProblemPage;
import benchpace.words.ProblemWords;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Supplier;

/**
 * One file to help those who help: shown before it is downloaded, and sent by nobody but the organiser. For
 * instructors.
 */
public final class ProblemPages {
    private final ProblemReports problems;
    private final Supplier<List<String>> degraded;
    private final Access access;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;

    /** @param degraded what does not work as it should just now, a sentence each */
    public ProblemPages(ProblemReports problems, Supplier<List<String>> degraded, Access access, Screens screens,
                        InstantSource clock, ZoneId zone) {
        this.problems = problems;
        this.degraded = degraded;
        this.access = access;
        this.screens = screens;
        this.clock = clock;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/data/problem", this::page);
        Reads.route(routes, "/data/problem.zip", this::download);
    }

    private void page(Context ctx) {
        access.instructor(ctx);
        List<ProblemReports.Choice> choices = problems.choices();
        Times times = new Times(zone);
        List<String> usual = ProblemReports.usual(choices);
        List<ProblemPage.Choice> shown = choices.stream().limit(ProblemPage.MOST_CHOICES)
                .map(c -> new ProblemPage.Choice(c.id(), c.name(), times.day(c.startsAt()), usual.contains(c.id())))
                .toList();
        Pages.html(ctx, screens.problem(ProblemPage.of(shown, problems.facts(List.of(), degraded.get()))));
    }

    /** {@code ?class=ID}, as often as classes are wanted; none leaves the classes out. */
    private void download(Context ctx) {
        access.instructor(ctx);
        ProblemFacts facts = problems.facts(ctx.queryParams("class"), degraded.get());
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        try {
            TextZip.write(ProblemWords.files(facts), clock.instant(), zip);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // into memory: there is no disk that could be full
        }
        ctx.header("Content-Disposition", "attachment; filename=\"" + ProblemWords.FILE + "\"");
        ctx.contentType("application/zip").result(zip.toByteArray());
    }
}
