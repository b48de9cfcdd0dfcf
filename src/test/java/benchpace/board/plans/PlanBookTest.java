package benchpace.board.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.files.BadFile;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanFolder;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.TestPlans;
import benchpace.store.SavedPlans;
import benchpace.store.SavedPlans.By;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans of the organiser: every version, their files, and what becomes of both over a restart. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanBookTest {
    private static final Plan STARTER = TestPlans.evening().as(new PlanId("starter"), "Starter");
    private static final Plan TINS = TestPlans.evening().as(new PlanId("tins"), "Tins");
    private static final By TABLET = new By("instructor", "tablet");

    @TempDir Path data;
    private Path plans;
    private Instant now = Instant.parse("2027-03-04T17:00:00Z");
    private Database database;
    private PlanBook book;

    @BeforeEach void open() {
        plans = data.resolve("plans");
        database = Database.open(data);
        book = PlanBook.open(() -> List.of(STARTER), new SavedPlans(database), new PlanFolder(plans), () -> now);
    }

    @AfterEach void close() {
        database.close();
    }

    private void restart() {
        close();
        open();
    }

    private static Plan called(Plan plan, String name) {
        return plan.as(plan.id(), name);
    }

    private Plan inFile(String file) throws IOException {
        return PlanFile.read(plans.resolve(file)).ifSound().orElseThrow();
    }

    private void put(String file, Plan plan) throws IOException {
        Files.createDirectories(plans);
        Files.write(plans.resolve(file), PlanFolder.text(plan));
    }

    private List<String> ids() {
        return book.all().stream().map(BookPlan::id).toList();
    }

    private List<String> names(String id) {
        return book.versions(id).stream().map(v -> v.number() + " " + v.plan().orElseThrow().name()).toList();
    }

    private List<String> files() throws IOException {
        try (var all = Files.list(plans)) {
            return all.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private PlanRefusal refusal(PlanAnswer answer) {
        assertThat(answer).isInstanceOf(PlanAnswer.Refused.class);
        return ((PlanAnswer.Refused) answer).why();
    }

    private BookPlan kept(PlanAnswer answer) {
        assertThat(answer).isInstanceOf(PlanAnswer.Kept.class);
        return ((PlanAnswer.Kept) answer).plan();
    }

    @Test void every_version_stays_and_survives_a_restart() throws IOException {
        book.add(TINS, TABLET);
        now = now.plusSeconds(60);
        kept(book.save(called(TINS, "Small tins"), v -> v == 1, TABLET));
        restart();

        assertThat(ids()).containsExactly("tins", "starter");
        assertThat(book.find("tins").orElseThrow().plan()).isEqualTo(called(TINS, "Small tins"));
        assertThat(names("tins")).containsExactly("2 Small tins", "1 Tins");
        assertThat(book.versions("tins")).extracting(SavedPlans.Version::at)
                .containsExactly(now, now.minusSeconds(60));
        assertThat(book.versions("tins")).allSatisfy(v -> assertThat(v.by()).isEqualTo(TABLET));
        assertThat(inFile("tins.json")).isEqualTo(called(TINS, "Small tins"));
    }

    @Test void a_version_that_says_nothing_new_is_not_kept_twice() {
        book.add(TINS, TABLET);

        assertThat(kept(book.save(TINS, v -> true, TABLET)).version()).isEqualTo(1);

        assertThat(book.versions("tins")).hasSize(1);
    }

    @Test void a_new_plan_whose_id_is_taken_gets_a_free_one() throws IOException {
        assertThat(book.add(STARTER, TABLET).id()).isEqualTo("starter-2");
        assertThat(book.add(STARTER, TABLET).id()).isEqualTo("starter-3");
        kept(book.delete("starter-3", v -> true));
        assertThat(book.add(STARTER, TABLET).id()).as("nor one that can be brought back").isEqualTo("starter-4");

        PlanId longest = new PlanId("x".repeat(PlanId.LONGEST));
        book.add(TINS.as(longest, "Long"), TABLET);
        assertThat(book.add(TINS.as(longest, "Long"), TABLET).id()).isEqualTo("x".repeat(38) + "-2");
        assertThat(inFile("starter-2.json").id()).isEqualTo(new PlanId("starter-2"));
    }

    @Test void a_copy_has_the_name_it_is_given_and_an_id_of_its_own() {
        BookPlan copy = kept(book.copy("starter", "Mine", TABLET));

        assertThat(copy.plan()).isEqualTo(STARTER.as(new PlanId("starter-2"), "Mine"));
        assertThat(refusal(book.copy("nobody", "Mine", TABLET))).isEqualTo(new PlanRefusal.NoSuchPlan("nobody"));
    }

    @Test void a_starter_plan_is_never_changed() {
        PlanRefusal starter = new PlanRefusal.Starter(STARTER);

        assertThat(refusal(book.save(STARTER, v -> true, TABLET))).isEqualTo(starter);
        assertThat(refusal(book.delete("starter", v -> true))).isEqualTo(starter);
        assertThat(refusal(book.bringBack("starter", 1, v -> true, TABLET))).isEqualTo(starter);
        assertThat(refusal(book.restore("starter"))).isEqualTo(starter);
    }

    @Test void a_change_of_a_version_that_is_not_the_newest_is_refused_with_the_newest() {
        book.add(TINS, TABLET);
        BookPlan second = kept(book.save(called(TINS, "Second"), v -> v == 1, TABLET));

        assertThat(refusal(book.save(called(TINS, "Other"), v -> v == 1, TABLET)))
                .isEqualTo(new PlanRefusal.Stale(second));
        assertThat(refusal(book.delete("tins", v -> v == 1))).isEqualTo(new PlanRefusal.Stale(second));
        assertThat(book.find("tins")).contains(second);
    }

    @Test void what_was_deleted_comes_back_as_it_was_also_after_a_restart() throws IOException {
        BookPlan tins = book.add(TINS, TABLET);
        kept(book.delete("tins", v -> v == 1));

        assertThat(ids()).containsExactly("starter");
        assertThat(files()).isEmpty();
        assertThat(refusal(book.save(TINS, v -> true, TABLET))).isEqualTo(new PlanRefusal.Deleted(TINS));
        restart();
        assertThat(book.deleted()).containsExactly(tins);

        assertThat(kept(book.restore("tins"))).isEqualTo(tins);
        assertThat(kept(book.restore("tins"))).as("again").isEqualTo(tins);
        assertThat(ids()).containsExactly("tins", "starter");
        assertThat(book.deleted()).isEmpty();
        assertThat(inFile("tins.json")).isEqualTo(TINS);
    }

    @Test void an_earlier_version_brought_back_is_a_new_one() {
        book.add(TINS, TABLET);
        book.save(called(TINS, "Second"), v -> true, TABLET);

        assertThat(kept(book.bringBack("tins", 1, v -> v == 2, TABLET)).version()).isEqualTo(3);

        assertThat(names("tins")).containsExactly("3 Tins", "2 Second", "1 Tins");
        assertThat(refusal(book.bringBack("tins", 9, v -> true, TABLET)))
                .isEqualTo(new PlanRefusal.NoSuchVersion(TINS, 9));
    }

    // ---- the folder

    @Test void a_file_put_in_the_folder_is_taken_in_at_the_next_start() throws IOException {
        put("from-a-friend.json", TINS);
        restart();

        assertThat(book.find("tins").orElseThrow().plan()).isEqualTo(TINS);
        assertThat(book.versions("tins")).singleElement().satisfies(v -> assertThat(v.by()).isEqualTo(By.FOLDER));
        assertThat(files()).containsExactly("from-a-friend.json", "tins.json");
        restart();
        assertThat(book.versions("tins")).as("not again").hasSize(1);
    }

    @Test void a_file_changed_by_hand_is_a_new_version() throws IOException {
        book.add(TINS, TABLET);
        close();
        put("tins.json", called(TINS, "By hand"));
        open();

        assertThat(names("tins")).containsExactly("2 By hand", "1 Tins");
    }

    @Test void an_older_file_put_back_counts_and_an_untouched_one_does_not() throws IOException {
        book.add(TINS, TABLET);
        book.save(called(TINS, "Second"), v -> true, TABLET);
        restart();
        assertThat(names("tins")).containsExactly("2 Second", "1 Tins");

        put("tins.json", TINS);
        restart();
        assertThat(names("tins")).containsExactly("3 Tins", "2 Second", "1 Tins");
    }

    @Test void a_file_laid_out_otherwise_is_left_as_it_is() throws IOException {
        book.add(TINS, TABLET);
        String wide = Files.readString(plans.resolve("tins.json")).replace("\n", "\n\n");
        Files.writeString(plans.resolve("tins.json"), wide);
        restart();

        assertThat(book.versions("tins")).hasSize(1);
        assertThat(plans.resolve("tins.json")).hasContent(wide);
    }

    @Test void a_file_changed_while_the_board_is_open_is_not_overwritten_unseen() throws IOException {
        book.add(TINS, TABLET);
        put("tins.json", called(TINS, "By hand"));

        PlanRefusal refusal = refusal(book.save(called(TINS, "In the browser"), v -> v == 1, TABLET));

        assertThat(refusal).isEqualTo(new PlanRefusal.Stale(book.find("tins").orElseThrow()));
        assertThat(names("tins")).containsExactly("2 By hand", "1 Tins");
        assertThat(refusal(book.delete("tins", v -> v == 1))).isInstanceOf(PlanRefusal.Stale.class);
    }

    @Test void a_broken_file_in_a_plans_place_is_put_aside_when_the_plan_is_saved() throws IOException {
        book.add(TINS, TABLET);
        Files.writeString(plans.resolve("tins.json"), "{\"id\":");

        kept(book.save(called(TINS, "Second"), v -> v == 1, TABLET));

        assertThat(inFile("tins.json")).isEqualTo(called(TINS, "Second"));
        assertThat(plans.resolve("tins.json.kept-1")).hasContent("{\"id\":");
    }

    @Test void a_broken_file_in_the_folder_is_told_before_anything_is_opened() throws IOException {
        put("tins.json", TINS);
        Files.writeString(plans.resolve("broken.json"), "[]");

        assertThatThrownBy(() -> PlanBook.open(List::of, new SavedPlans(database), new PlanFolder(plans), () -> now))
                .isInstanceOf(BadFile.class).hasMessageContaining("broken.json");
        assertThat(new SavedPlans(database).versions("tins")).isEmpty();
    }

    @Test void a_file_with_the_id_of_a_starter_plan_stands_in_its_place() throws IOException {
        put("starter.json", called(STARTER, "Our own"));
        restart();

        assertThat(ids()).containsExactly("starter");
        assertThat(book.find("starter").orElseThrow().starter()).isFalse();
        kept(book.delete("starter", v -> true));
        assertThat(book.find("starter").orElseThrow().starter()).isTrue();
    }

    @Test void a_folder_that_takes_no_file_costs_no_plan_and_is_told() throws IOException {
        Files.writeString(plans, "a file where the folder should be");

        book.add(TINS, TABLET);

        assertThat(book.troubles()).containsExactly(new PlanTrouble.NotWritten("tins", "tins.json"));
        Files.delete(plans);
        restart();
        assertThat(inFile("tins.json")).isEqualTo(TINS);
        assertThat(book.troubles()).isEmpty();
    }

    @Test void what_was_being_written_when_the_power_went_is_cleared_away() throws IOException {
        book.add(TINS, TABLET);
        Files.writeString(plans.resolve("tins.json.part"), "{\"id\":\"ti");
        Files.delete(plans.resolve("tins.json"));
        restart();

        assertThat(files()).containsExactly("tins.json");
        assertThat(inFile("tins.json")).isEqualTo(TINS);
    }

    @Test void the_file_of_a_plan_deleted_just_before_the_power_went_goes_at_the_next_start() throws IOException {
        book.add(TINS, TABLET);
        new SavedPlans(database).delete(TINS.id(), now);
        restart();

        assertThat(ids()).containsExactly("starter");
        assertThat(files()).isEmpty();
    }

    @Test void a_version_that_cannot_be_read_takes_no_other_with_it_and_is_told() {
        book.add(TINS, TABLET);
        book.add(TINS.as(new PlanId("bowl"), "Bowl"), TABLET);
        for (String id : List.of("tins", "bare")) {
            database.write(connection -> Statements.change(connection,
                    "insert into saved_plan values (?, ?, 0, 'instructor', '', '{')", id, id.equals("tins") ? 2 : 1));
        }
        restart();

        assertThat(book.troubles()).containsExactly(new PlanTrouble.Unreadable("bare", 1, 0),
                new PlanTrouble.Unreadable("tins", 2, 1));
        assertThat(ids()).containsExactly("bowl", "tins", "starter");
        assertThat(book.versions("tins")).extracting(SavedPlans.Version::plan)
                .containsExactly(Optional.empty(), Optional.of(TINS));
        assertThat(kept(book.save(called(TINS, "Third"), v -> v == 1, TABLET)).version()).isEqualTo(3);
        assertThat(book.troubles()).hasSize(1);
    }
}
