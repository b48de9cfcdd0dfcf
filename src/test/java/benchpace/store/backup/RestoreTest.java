package benchpace.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.live.Nameless;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.store.Deeds;
import benchpace.store.FileSweep;
import benchpace.store.Forgotten;
import benchpace.store.Remnants;
import benchpace.store.ShelfLog;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.FolderLock;
import benchpace.store.sqlite.StoreException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class RestoreTest extends BackedUp {
    private void assertNotRestored(Path backup, String... words) {
        Path folder = temp.resolve("new");
        assertThatThrownBy(() -> restored(backup, folder, false)).isInstanceOf(StoreException.class)
                .message().contains(words).endsWith(".").doesNotContain("SQLITE", "Exception");
        assertThat(folder).doesNotExist();
    }

    @Test void what_is_no_backup_is_told_in_a_sentence_each() throws Exception {
        Path data = data();
        assertNotRestored(temp.resolve("none"), "There is no file");
        assertNotRestored(data, "There is a folder at");
        assertNotRestored(Files.createFile(temp.resolve("empty")), "is empty");
        assertNotRestored(Files.writeString(temp.resolve("letter.txt"), "Dear Ida"), "no backup of Benchpace");
        assertNotRestored(Files.writeString(temp.resolve("long.txt"), "Dear Ida, ".repeat(900)), "no backup of");
        assertNotRestored(Path.of("/dev/zero"), "is no file");
        sql(temp.resolve("bread.db"), "create table bread (loaf text)");
        assertNotRestored(temp.resolve("bread.db"), "database of another program");
        assertNotRestored(data.resolve("benchpace.db"), "a board's own data", "--data");
    }

    @Test void a_backup_of_a_newer_board_says_so() throws Exception {
        Path backup = made(data()).file();
        sql(backup, "pragma user_version = 99");

        assertNotRestored(backup, "newer Benchpace", "please restore it with that one");
    }

    @Test void a_backup_that_was_cut_off_or_changed_is_told() throws Exception {
        Path backup = made(data()).file();
        byte[] whole = Files.readAllBytes(backup);
        for (int length : new int[] {101, 4096, whole.length / 2, whole.length - 1}) {
            Files.write(backup, Arrays.copyOf(whole, length));
            assertNotRestored(backup, "is cut off", "of its " + whole.length + " bytes");
        }
        Files.write(backup, whole);
        sql(backup, "update setting set value = value || 'x'");
        assertNotRestored(backup, "is damaged");
        Files.write(backup, whole);
        sql(backup, "create trigger t after insert on setting begin delete from event; end");
        assertNotRestored(backup, "is damaged");
        Files.write(backup, whole);
        sql(backup, "update backup set value = '1' where key = 'events'");
        assertNotRestored(backup, "is damaged");
    }

    @Test void a_folder_with_data_is_not_replaced_unasked_and_is_kept_aside_if_asked() throws Exception {
        Path backup = made(data()).file();
        Path folder = StoredFolder.filled(temp.resolve("other"), 30);
        Files.createDirectory(folder.resolve("plans"));
        Files.writeString(folder.resolve("plans/own.json"), "{}");
        List<String> before = StoredFolder.rows(folder);

        assertThatThrownBy(() -> restored(backup, folder, false)).hasMessageContainingAll("--replace", "kept aside");
        assertThat(StoredFolder.rows(folder)).isEqualTo(before);

        Restore.Restored restored = restored(backup, folder, true);
        assertThat(restored.before()).contains(folder.resolve("replaced-1"));
        assertThat(StoredFolder.rows(folder)).isEqualTo(StoredFolder.rows(temp.resolve("data")));
        assertThat(folder.resolve("plans")).doesNotExist();
        assertThat(folder.resolve("replaced-1/plans/own.json")).hasContent("{}");
        assertThat(StoredFolder.rows(folder.resolve("replaced-1"))).isEqualTo(before);
        assertThat(restored(backup, folder, true).before()).contains(folder.resolve("replaced-2"));
    }

    @Test void guests_whom_the_replaced_folder_had_forgotten_meanwhile_are_forgotten_again() {
        Path data = data();
        Path backup = made(data).file();
        assertThat(StoredFolder.rows(data)).anyMatch(row -> row.contains("note 209"));
        try (Database database = Database.open(data)) {
            SqliteEventLog log = new SqliteEventLog(database);
            log.forgetGuests("class-5", new Forgotten(NOW, false), Nameless.ofGuests().all(log.read("class-5")));
        }
        List<String> forgotten = StoredFolder.rows(data);

        restored(backup, data, true);

        assertThat(StoredFolder.rows(data)).noneMatch(row -> row.contains("note 209"))
                .filteredOn(row -> row.startsWith("event|") || row.startsWith("forgotten_class|"))
                .isEqualTo(forgotten.stream().filter(row -> row.startsWith("event|")
                        || row.startsWith("forgotten_class|")).toList());
    }

    @Test void words_of_candles_that_were_erased_meanwhile_are_erased_again_down_to_the_bytes() {
        Path data = StoredFolder.filled(temp.resolve("data"), 223); // candle 23 stands on the shelf
        Path backup = made(data).file();
        assertThat(Remnants.of(data, List.of("Guest 221"))).isNotEmpty();
        try (Database database = Database.open(data)) {
            Deeds deeds = new Deeds(database);
            for (int number = 223; number <= 225; number++) { // handed out, and in time erased
                deeds.doThe(number);
            }
            assertThat(new FileSweep(database).sweep()).isTrue();
        }

        restored(backup, data, true);

        assertThat(Remnants.of(data, List.of("Guest 221"))).isEmpty();
        try (Database database = Database.open(data)) {
            assertThat(new FileSweep(database).owed()).isFalse();
            ShelfEntry candle = Shelf.of(new ShelfLog(database).read().events()).entry(new EntryId(23)).orElseThrow();
            assertThat(candle.erased()).isTrue();
            assertThat(candle.collected()).as("nobody could hand it out without its word").isTrue();
        }
        assertThat(StoredFolder.rows(data)).as("and again").isEqualTo(rowsAfterRestoring(backup, data));
    }

    private List<String> rowsAfterRestoring(Path backup, Path data) {
        restored(backup, data, true);
        return StoredFolder.rows(data);
    }

    @Test void a_candle_of_other_data_with_the_same_number_keeps_its_words() {
        Path backup = made(StoredFolder.filled(temp.resolve("data"), 223)).file();
        Path other = temp.resolve("other");
        try (Database database = Database.open(other)) {
            ShelfLog shelf = new ShelfLog(database);
            EntryId same = new EntryId(23);
            shelf.append("1", List.of(new ShelfEvent.Placed(same, NOW, "elsewhere", new SeatNumber(1),
                    new ShelfPlace("Window", 1), NOW, NOW, new ClaimWord("fern", 11), "Somebody")));
            shelf.append("2", List.of(new ShelfEvent.Collected(same, NOW), new ShelfEvent.Erased(same, NOW)));
        }

        restored(backup, other, true);

        assertThat(StoredFolder.rows(other)).isEqualTo(StoredFolder.rows(temp.resolve("data")));
    }

    @Test void a_class_forgotten_meanwhile_that_the_backup_has_unreadable_is_restored_without_words_that_can_be_told()
            throws Exception {
        Path data = data();
        Path broken = StoredFolder.filled(temp.resolve("broken"));
        sql(broken.resolve("benchpace.db"), "drop trigger event_is_only_changed_to_forget; "
                + "update event set payload = '{' where class_id = 'class-5' and seq = 2");
        Path backup = made(broken).file();
        List<String> original = StoredFolder.rows(broken);
        try (Database database = Database.open(data)) {
            SqliteEventLog log = new SqliteEventLog(database);
            log.forgetGuests("class-5", new Forgotten(NOW, false), Nameless.ofGuests().all(log.read("class-5")));
        }

        restored(backup, data, true);

        assertThat(Remnants.of(data.resolve("benchpace.db"), List.of("note 209"))).isEmpty();
        Predicate<String> others = row -> !row.contains("|class-5|") && !row.contains("|file.sweep-owed|");
        assertThat(StoredFolder.rows(data)).filteredOn(others).isEqualTo(original.stream().filter(others).toList());
        assertThat(StoredFolder.rows(data)).as("what is damaged stays as it is, for whoever may mend it")
                .containsAll(original.stream().filter(row -> row.startsWith("event|class-5|2|")).toList())
                .anyMatch(row -> row.startsWith("forgotten_class|class-5|"));
    }

    @Test void damaged_data_can_be_replaced_and_are_kept_as_they_are() throws Exception {
        Path backup = made(data()).file();
        Path folder = StoredFolder.filled(temp.resolve("other"), 30);
        Files.write(folder.resolve("benchpace.db"), "noise".repeat(2000).getBytes(StandardCharsets.US_ASCII));
        Files.writeString(folder.resolve("benchpace.db-wal"), "noise");

        restored(backup, folder, true);

        assertThat(StoredFolder.rows(folder)).isEqualTo(StoredFolder.rows(temp.resolve("data")));
        assertThat(folder.resolve("replaced-1/benchpace.db-wal")).hasContent("noise");
        assertThat(folder.resolve("replaced-1/benchpace.db")).hasContent("noise".repeat(2000));
    }

    @Test void nothing_is_restored_into_a_folder_on_which_a_board_is_open() {
        Path data = data();
        Path backup = made(data).file();
        try (FolderLock board = FolderLock.of(data)) {
            assertThatThrownBy(() -> restored(backup, data, true)).hasMessageContaining("in use by another running");
            assertThat(made(data, "while.backup").manifest().holdings().classes()).as("but copied").isEqualTo(4);
        }
    }
}
