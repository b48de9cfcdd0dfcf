package benchpace.files.plan;

import benchpace.files.BadFile;
import benchpace.files.Json;
import benchpace.files.SizedText;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The organiser's own plans as plain files that can be copied and mailed: every {@code *.json} of a folder. A file is
 * written beside its place first and then moved there, so that it holds the old plan or the new one, never half of one.
 */
public final class PlanFolder {
    private static final String ENDING = ".json";
    private static final String UNFINISHED = ".part";
    private static final String PUT_ASIDE = ".kept-";

    private final Path folder;

    /**
     * A file that holds a sound plan.
     *
     * @param file   its name in the folder
     * @param sha256 of its bytes, in hex
     */
    public record Found(String file, Plan plan, String sha256) { }

    /** @param folder need not be there yet */
    public PlanFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * The plans of a folder in the order of their file names; none if there is no such folder.
     *
     * @throws BadFile for the first file that holds no sound plan
     */
    public static List<Plan> read(Path folder) {
        return new PlanFolder(folder).found().stream().map(Found::plan).toList();
    }

    /**
     * Everything that stands in the folder, in the order of file names; nothing if there is no such folder.
     *
     * @throws BadFile for the first file that holds no sound plan
     */
    public List<Found> found() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Found> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING)).sorted().toList()) {
                found.add(found(file));
            }
        } catch (IOException | UncheckedIOException e) {
            throw new BadFile("The plans in " + folder + " cannot be read: " + e.getMessage() + ".", e);
        }
        return found;
    }

    private static Found found(Path file) throws IOException {
        requireFile(file);
        byte[] bytes = bytes(file);
        PlanReading reading = PlanFile.read(new ByteArrayInputStream(bytes));
        Plan plan = reading.ifSound().orElseThrow(() -> new BadFile(file + ": " + reading.problems().get(0) + "."));
        return new Found(file.getFileName().toString(), plan, sha256(bytes));
    }

    /** Neither a folder nor a device: reading one of those may never end. */
    private static void requireFile(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadFile(file + ": it is named as a plan and is no file that can be read.");
        }
    }

    /** No more than tells that there is too much. */
    private static byte[] bytes(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(SizedText.PLAN + 1);
        }
    }

    /** The name of the file that a plan is written to. */
    public static String file(PlanId id) {
        return id + ENDING;
    }

    /** What a plan's file would hold, as its SHA-256 in hex. */
    public static String sha256(Plan plan) {
        return sha256(text(plan));
    }

    /** A plan as people are given it: indented JSON in UTF-8, with a line's end. */
    public static byte[] text(Plan plan) {
        return (Json.pretty(PlanFile.write(plan)) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** What a file of the folder holds now; empty if there is none. */
    public Optional<String> sha256(String file) throws IOException {
        Path path = folder.resolve(file);
        return Files.isRegularFile(path) ? Optional.of(sha256(bytes(path))) : Optional.empty();
    }

    /**
     * A file of the folder that has been put there while the board was open; empty if there is none.
     *
     * @throws BadFile if it holds no sound plan
     */
    public Optional<Found> found(String file) throws IOException {
        Path path = folder.resolve(file);
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS) ? Optional.of(found(path)) : Optional.empty();
    }

    /** Writes a plan's file whole, or leaves what was there. */
    public void write(Plan plan) throws IOException {
        Files.createDirectories(folder);
        Path unfinished = folder.resolve(file(plan.id()) + UNFINISHED);
        try {
            try (FileChannel channel = FileChannel.open(unfinished, StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                ByteBuffer text = ByteBuffer.wrap(text(plan));
                while (text.hasRemaining()) {
                    channel.write(text);
                }
                channel.force(true);
            }
            Files.move(unfinished, folder.resolve(file(plan.id())), StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            Files.deleteIfExists(unfinished);
            throw e;
        }
    }

    /** Takes away what was being written when the program last ended. */
    public void clear() {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING + UNFINISHED)).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException e) {
            // they are no plans, and the next time they are written over
        }
    }

    /** Takes a file away; nothing if there is none. */
    public void delete(String file) throws IOException {
        Files.deleteIfExists(folder.resolve(file));
    }

    /** Gives a file that holds no plan another name, by which it is not taken for one, so that nothing is lost. */
    public void putAside(String file) throws IOException {
        for (int n = 1;; n++) {
            Path aside = folder.resolve(file + PUT_ASIDE + n);
            if (!Files.exists(aside, LinkOption.NOFOLLOW_LINKS)) {
                Files.move(folder.resolve(file), aside);
                return;
            }
        }
    }
}
