package benchpace.board.plans;

import benchpace.files.plan.PlanFolder;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.TestPlans;
import benchpace.store.SavedPlans;
import benchpace.store.sqlite.Database;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** A book of plans to be killed: saves one version after the other, without end, and says each once it is saved. */
final class SavingBook {
    static final PlanId TINS = new PlanId("tins");
    private static final SavedPlans.By TABLET = new SavedPlans.By("instructor", "");

    private SavingBook() { }

    static PlanBook open(Database database, Path folder) {
        return PlanBook.open(List::of, new SavedPlans(database), new PlanFolder(folder.resolve("plans")),
                () -> Instant.EPOCH);
    }

    static Plan plan(int version) {
        return TestPlans.evening().as(TINS, "Version " + version);
    }

    public static void main(String[] args) {
        Path folder = Path.of(args[0]);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.US_ASCII);
        try (Database database = Database.open(folder)) {
            PlanBook book = open(database, folder);
            int next = 1 + book.find(TINS.value()).map(BookPlan::version).orElse(0);
            for (int version = next;; version++) {
                if (version == 1) {
                    book.add(plan(version), TABLET);
                } else {
                    book.save(plan(version), v -> true, TABLET);
                }
                out.println("saved " + version + " .");
            }
        }
    }
}
