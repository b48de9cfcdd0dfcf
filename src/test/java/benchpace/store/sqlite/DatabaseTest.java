package benchpace.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.store.ClassOfThree;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening a data folder: what is made, and the one sentence for everything that prevents it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DatabaseTest {
    @TempDir Path folder;

    private void open() {
        Database.open(folder).close();
    }

    private void sql(String sql) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Database.FILE));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private void assertRefused(Path data, String sentence) {
        assertThatThrownBy(() -> Database.open(data).close()).isInstanceOf(StoreException.class).hasMessage(sentence);
    }

    @Test void a_folder_that_is_not_there_is_made() {
        Path deep = folder.resolve("deep/down");

        Database.open(deep).close();

        assertThat(deep.resolve("benchpace.db")).isRegularFile();
    }

    @Test void odd_names_of_folders_are_taken_as_they_are() {
        Path odd = folder.resolve("a b?c#d%20 é&mode=memory");

        try (Database database = Database.open(odd)) {
            new Settings(database).put("key", "kept");
        }

        assertThat(odd.resolve("benchpace.db")).isRegularFile();
        try (Database database = Database.open(odd)) {
            assertThat(new Settings(database).get("key")).contains("kept");
        }
    }

    @Test void every_append_is_on_disk_before_it_returns() {
        try (Database database = Database.open(folder)) {
            assertThat(pragma(database, "journal_mode")).isEqualTo("wal");
            assertThat(pragma(database, "synchronous")).isEqualTo("2");
        }
    }

    private static String pragma(Database database, String name) {
        return database.write(connection -> {
            try (Statement statement = connection.createStatement();
                    ResultSet row = statement.executeQuery("pragma " + name)) {
                return row.getString(1);
            }
        });
    }

    @Test void every_numbered_file_is_applied_and_none_is_forgotten() throws IOException, URISyntaxException {
        Path files = Path.of(Migrations.class.getResource("001-events.sql").toURI()).getParent();
        try (Stream<Path> all = Files.list(files)) {
            assertThat(all.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".sql")).sorted())
                    .isEqualTo(Migrations.FILES);
        }
        for (int i = 0; i < Migrations.FILES.size(); i++) {
            assertThat(Migrations.FILES.get(i)).startsWith(String.format("%03d-", i + 1));
        }
        try (Database database = Database.open(folder)) {
            assertThat(pragma(database, "user_version")).isEqualTo("" + Migrations.FILES.size());
        }
    }

    @Test void an_older_database_is_brought_up_to_date_and_keeps_its_events() throws Exception {
        try (Database database = Database.open(folder)) {
            new SqliteEventLog(database).append("a", ClassOfThree.created());
        }
        sql("drop table pairing_key; drop table seat_code; drop table session; drop table setting; "
                + "drop table room_lesson; drop table class_prior; drop table shelf_event; "
                + "drop table step_lesson; drop table step_belief; drop table class_belief; "
                + "drop table saved_plan; drop table deleted_plan; drop table plan_file; drop table prep_tick; "
                + "drop table class_summary; drop table class_lost; drop table room_decision; "
                + "drop trigger event_is_only_removed_with_its_class; drop table deleted_class; "
                + "drop trigger event_is_only_changed_to_forget; drop table forgotten_class; "
                + "create trigger event_is_never_changed before update on event begin select raise(abort, ''); end; "
                + "create trigger event_is_never_removed before delete on event begin select raise(abort, ''); end; "
                + "alter table event drop column device; pragma user_version = 1");

        try (Database database = Database.open(folder)) {
            assertThat(new SqliteEventLog(database).read("a")).containsExactly(ClassOfThree.created());
            assertThat(new Settings(database).get("key")).isEmpty();
        }
    }

    @Test void a_migration_that_fails_leaves_the_database_as_it_was() throws Exception {
        open();
        sql("pragma user_version = 2");

        assertThatThrownBy(() -> Database.open(folder)).isInstanceOf(StoreException.class);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Database.FILE))) {
            assertThat(Migrations.version(connection)).isEqualTo(2);
        }
    }

    @Test void a_database_of_a_newer_version_is_refused() throws Exception {
        open();
        sql("pragma user_version = 999");

        assertRefused(folder, "The data in " + folder.resolve(Database.FILE) + " was written by a newer Benchpace "
                + "(version 999, this one knows " + Migrations.FILES.size() + "): please use that one.");
    }

    @Test void a_database_of_another_program_is_left_alone() throws Exception {
        sql("create table bread (loaf text)");

        assertRefused(folder, "The file " + folder.resolve(Database.FILE) + " is a database of another program.");
    }

    @Test void a_folder_in_use_is_refused_until_it_is_free() {
        try (Database first = Database.open(folder)) {
            assertRefused(folder, "The data folder " + folder + " is in use by another running Benchpace.");
            assertThat(new Settings(first).get("key")).isEmpty();
        }
        open();
    }

    @Test void another_process_is_refused_too() throws Exception {
        try (Database held = Database.open(folder)) {
            Process other = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp", System.getProperty("java.class.path"), OpenOnce.class.getName(), folder.toString())
                    .redirectErrorStream(true).start();
            String said = new String(other.getInputStream().readAllBytes());

            assertThat(other.waitFor()).as(said).isEqualTo(2);
            assertThat(said).contains("is in use by another running Benchpace.");
            assertThat(new Settings(held).get("key")).isEmpty();
        }
    }

    /** Opens a folder in a process of its own and says what came of it. */
    static final class OpenOnce {
        public static void main(String[] args) {
            try {
                Database.open(Path.of(args[0])).close();
            } catch (StoreException refused) {
                System.out.println(refused.getMessage());
                System.exit(2);
            }
        }
    }

    @Test void a_folder_that_is_a_file_is_refused() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "no folder");

        assertRefused(file, "The data folder " + file + " is not a folder.");
        assertRefused(file.resolve("in"), "The data folder " + file.resolve("in") + " cannot be created.");
    }

    @Test void a_folder_that_cannot_be_written_is_refused() throws IOException {
        Files.createDirectory(folder.resolve("benchpace.lock"));

        assertRefused(folder, "The data folder " + folder + " cannot be written.");
    }

    @Test void a_database_that_cannot_be_opened_is_refused_and_the_folder_set_free() throws IOException {
        Path file = Files.createDirectory(folder.resolve(Database.FILE));

        assertRefused(folder, "The file " + file + " cannot be opened for reading and writing.");
        Files.delete(file);
        open();
    }

    @Test void a_file_that_is_no_database_is_refused_and_left_as_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve(Database.FILE), "This is a shopping list.\n".repeat(100));

        assertRefused(folder, "The file " + file + " is damaged or no database: please put back a copy of it, "
                + "or move it away to start anew.");
        assertThat(file).content().startsWith("This is a shopping list.");
    }

    @Test void a_damaged_database_is_found_out_when_it_is_opened() throws IOException {
        try (Database database = Database.open(folder)) {
            SqliteEventLog log = new SqliteEventLog(database);
            log.append("a", ClassOfThree.created());
            for (int seq = 2; seq < 60; seq++) {
                log.append("a", ClassOfThree.note(seq, "x".repeat(400)));
            }
        }
        Path file = folder.resolve(Database.FILE);
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            for (long page = 4096; page < bytes.length(); page += 4096) {
                bytes.seek(page);
                bytes.write(new byte[64]);
            }
        }

        assertRefused(folder, "The file " + file + " is damaged or no database: please put back a copy of it, "
                + "or move it away to start anew.");
    }

    @Test void a_write_that_throws_leaves_nothing_and_the_next_one_works() {
        try (Database database = Database.open(folder)) {
            Settings settings = new Settings(database);

            assertThatThrownBy(() -> database.write(connection -> {
                try (Statement statement = connection.createStatement()) {
                    statement.executeUpdate("insert into setting values ('half', 'done')");
                }
                throw new IllegalStateException("thought better of it");
            })).isInstanceOf(IllegalStateException.class);

            assertThat(settings.get("half")).isEmpty();
            settings.put("whole", "done");
            assertThat(settings.get("whole")).contains("done");
        }
    }

    @Test void a_connection_that_breaks_in_the_middle_is_replaced() {
        try (Database database = Database.open(folder)) {
            assertThatThrownBy(() -> database.write(connection -> {
                connection.close();
                try (Statement statement = connection.createStatement()) {
                    return statement.executeUpdate("insert into setting values ('lost', '')");
                }
            })).isInstanceOf(StoreException.class);

            new Settings(database).put("kept", "yes");
            assertThat(new Settings(database).get("kept")).contains("yes");
        }
    }

    @Test void a_closed_database_says_so() {
        Database database = Database.open(folder);
        database.close();

        for (Runnable use : List.<Runnable>of(() -> new Settings(database).get("key"),
                () -> new Settings(database).put("key", ""))) {
            assertThatThrownBy(use::run).isInstanceOf(StoreException.class)
                    .hasMessage("The data in " + folder.resolve(Database.FILE) + " is closed.");
        }
        assertThat(database.emptyWriteAheadLog()).as("no failure of what was written before").isFalse();
        database.close();
    }

    @Test void reading_connections_cannot_write() {
        try (Database database = Database.open(folder)) {
            assertThatThrownBy(() -> database.read(connection -> {
                try (Statement statement = connection.createStatement()) {
                    return statement.executeUpdate("insert into setting values ('by', 'the back door')");
                }
            })).isInstanceOf(StoreException.class);
            assertThat(new Settings(database).get("by")).isEmpty();
        }
    }
}
