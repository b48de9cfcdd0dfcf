package benchpace.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Texts as one zip file. The same texts at the same time are the same bytes. */
public final class TextZip {
    private TextZip() { }

    /** @param texts by the name of their file, in order @param at the time that the files bear */
    public static void write(Map<String, String> texts, Instant at, OutputStream into) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(into, StandardCharsets.UTF_8);
        for (Map.Entry<String, String> text : texts.entrySet()) {
            ZipEntry entry = new ZipEntry(text.getKey());
            entry.setLastModifiedTime(FileTime.from(at));
            zip.putNextEntry(entry);
            zip.write(text.getValue().getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        zip.finish();
        zip.flush();
    }
}
