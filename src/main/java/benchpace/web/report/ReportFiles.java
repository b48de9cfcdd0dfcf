package benchpace.web.report;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.ShelfBoard;
import benchpace.board.export.ExportedClass;
import benchpace.board.view.ClassReport;
import benchpace.files.export.ClassFile;
import benchpace.files.export.ClassJson;
import benchpace.files.export.ClassTable;
import benchpace.live.LiveClass;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;

/**
 * A class and its look back as a file: all of it as JSON, or as one table. For the instructor, as it has the guests'
 * names; {@code ?guests=no} leaves them out.
 */
public final class ReportFiles {
    private final Boards boards;
    private final ShelfBoard shelf;
    private final Access access;

    /** Puts a class into a file. */
    private interface Writing {
        void write(ClassFile file, Writer out) throws IOException;
    }

    public ReportFiles(Boards boards, ShelfBoard shelf, Access access) {
        this.boards = boards;
        this.shelf = shelf;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/classes/{id}/report.json",
                ctx -> file(ctx, "json", "application/json", ClassJson::write));
        Reads.route(routes, "/api/classes/{id}/report.csv",
                ctx -> file(ctx, "csv", "text/csv; charset=utf-8; header=present", ClassTable::write));
    }

    private void file(Context ctx, String ending, String type, Writing writing) {
        access.instructor(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        boolean guests = guests(ctx);
        ExportedClass exported = exported(board);
        StringWriter text = new StringWriter();
        try {
            writing.write((guests ? exported : exported.withoutGuests()).file(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        ctx.contentType(type).header("Content-Disposition", "attachment; filename=\"" + board.id()
                + (guests ? "" : "-without-guests") + "." + ending + "\"").result(text.toString());
    }

    private static boolean guests(Context ctx) {
        String guests = ctx.queryParam("guests");
        if (guests != null && !guests.equals("yes") && !guests.equals("no")) {
            throw new Refused(Problem.unprocessable("\"guests\" is \"yes\" or \"no\"."));
        }
        return !"no".equals(guests);
    }

    /** Events and figures of the same moment. */
    private ExportedClass exported(ClassBoard board) {
        LiveClass live;
        ClassReport report;
        do {
            live = board.live();
            report = board.report();
        } while (report.view().seq() != live.seq());
        return ExportedClass.of(live, report.with(shelf.shelf().entries()));
    }
}
