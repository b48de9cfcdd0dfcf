package benchpace.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DraftTest {
    @TempDir Path folder;

    private List<Path> there() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !path.equals(folder)).map(folder::relativize).sorted().toList();
        }
    }

    /** As a process leaves it that was killed. */
    private Path left(String number) throws IOException {
        Path left = Files.createDirectory(folder.resolve("benchpace-00000000-0000-0000-0000-00000000000" + number
                + ".part"));
        Files.createFile(left.resolve("lock"));
        Files.writeString(left.resolve("draft"), "Ida");
        Files.writeString(left.resolve("draft-journal"), "Ida");
        return left;
    }

    @Test void it_is_made_where_its_owner_alone_may_look_and_nothing_is_left_of_it() throws IOException {
        try (Draft draft = Draft.beside(folder.resolve("b.backup"))) {
            assertThat(draft.file()).doesNotExist();
            Files.writeString(draft.file(), "Ida");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(draft.file().getParent())))
                    .isEqualTo("rwx------");
        }
        assertThat(there()).isEmpty();
    }

    @Test void what_is_moved_to_its_place_stays() throws IOException {
        try (Draft draft = Draft.beside(folder.resolve("b.backup"))) {
            Files.writeString(draft.file(), "whole");
            Files.move(draft.file(), folder.resolve("b.backup"));
        }
        assertThat(there()).containsExactly(Path.of("b.backup"));
    }

    @Test void one_that_is_being_made_by_this_very_process_is_not_swept_however_often() throws IOException {
        try (Draft draft = Draft.beside(folder.resolve("b.backup"))) {
            Files.writeString(draft.file(), "half");
            Draft.sweep(folder);
            try (Draft other = Draft.beside(folder.resolve("c.backup"))) {
                assertThat(other.file()).isNotEqualTo(draft.file());
            }
            Draft.sweep(folder);
            assertThat(draft.file()).hasContent("half");
        }
    }

    @Test void one_that_is_being_made_by_another_process_stays_until_that_is_killed() throws Exception {
        try (DraftingProgram other = DraftingProgram.started(folder)) {
            Draft.sweep(folder);
            Draft.beside(folder.resolve("mine")).close();
            assertThat(other.draft()).hasContent("half");
            assertThat(FolderLock.isHeld(folder)).as("a draft is no board").isFalse();

            other.kill();
            assertThat(other.draft()).hasContent("half");
            Draft.sweep(folder);
            assertThat(there()).isEmpty();
        }
    }

    @Test void what_was_left_goes_with_the_next_one_in_the_same_place() throws IOException {
        left("1");
        left("2");
        try (Draft draft = Draft.beside(folder.resolve("b.backup"))) {
            assertThat(there()).containsExactlyInAnyOrder(folder.relativize(draft.file().getParent()),
                    folder.relativize(draft.file().resolveSibling("lock")));
        }
    }

    @Test void of_a_sweeping_or_a_beginning_that_was_killed_the_rest_goes_too() throws IOException {
        Path unlocked = left("1");
        Files.delete(unlocked.resolve("draft"));
        Path empty = left("2");
        for (String name : List.of("draft", "draft-journal", "lock")) {
            Files.delete(empty.resolve(name));
        }
        Path outer = left("3");
        Files.move(left("4"), outer.resolve("benchpace-00000000-0000-0000-0000-000000000004.part"));

        Draft.sweep(folder);

        assertThat(there()).isEmpty();
    }

    @Test void what_is_not_ours_stays() throws IOException {
        Path hers = Files.createDirectory(folder.resolve("benchpace-photographs.part"));
        Files.createFile(hers.resolve("lock"));
        Files.writeString(hers.resolve("draft"), "hers");
        Files.writeString(folder.resolve("benchpace-00000000-0000-0000-0000-000000000005.part"), "a file");
        Path aim = Files.createDirectory(folder.resolve("aim"));
        Files.createFile(aim.resolve("lock"));
        Files.writeString(aim.resolve("draft"), "hers");
        Files.createSymbolicLink(folder.resolve("benchpace-00000000-0000-0000-0000-000000000006.part"), aim);
        Path with = left("7");
        Files.writeString(with.resolve("letter"), "hers");
        Path unlocked = Files.createDirectory(folder.resolve("benchpace-00000000-0000-0000-0000-000000000008.part"));
        Files.writeString(unlocked.resolve("draft"), "of a disk without locks");
        List<Path> before = there();

        Draft.sweep(folder);
        Draft.sweep(folder.resolve("nowhere"));

        assertThat(before).hasSize(15).filteredOn(path -> !path.startsWith(with.getFileName()))
                .isEqualTo(there().stream().filter(path -> !path.startsWith(with.getFileName())).toList());
        assertThat(with.resolve("letter")).hasContent("hers");
        assertThat(aim.resolve("draft")).hasContent("hers");
    }

    @Test void where_nothing_can_be_made_it_is_said_in_a_sentence() {
        assertThatThrownBy(() -> Draft.beside(folder.resolve("no/such/file"))).isInstanceOf(NoRoom.class)
                .hasMessageContaining("nothing can be written").hasMessageEndingWith(".");
    }
}
