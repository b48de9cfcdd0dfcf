package benchpace.files.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * Writes an iCalendar file (RFC 5545): CRLF line ends, lines folded at 75 octets between characters (section 3.1),
 * text escaped (3.3.11), moments in UTC (3.3.5, form 2), whole days as DATE with the exclusive end (3.6.1).
 */
public final class CalendarFile {
    /** The media type to serve it under. */
    public static final String MEDIA_TYPE = "text/calendar; charset=utf-8";

    private static final int MOST_OCTETS = 75;
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    private CalendarFile() { }

    /**
     * The file's text, to be sent as UTF-8.
     *
     * @param stamp when it is written
     */
    public static String text(List<CalendarEntry> entries, Instant stamp) {
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:-//Benchpace//Class board//EN");
        for (CalendarEntry entry : entries) {
            entry(out, entry, stamp);
        }
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    private static void entry(StringBuilder out, CalendarEntry entry, Instant stamp) {
        line(out, "BEGIN:VEVENT");
        line(out, "UID:" + escape(entry.uid()));
        line(out, "DTSTAMP:" + UTC.format(stamp));
        if (entry instanceof CalendarEntry.Timed timed) {
            line(out, "DTSTART:" + UTC.format(timed.from()));
            if (timed.until().isAfter(timed.from())) {
                line(out, "DTEND:" + UTC.format(timed.until()));
            }
        } else if (entry instanceof CalendarEntry.AllDay whole) {
            line(out, "DTSTART;VALUE=DATE:" + day(whole.day()));
            line(out, "DTEND;VALUE=DATE:" + day(whole.day().plusDays(1)));
        }
        line(out, "SUMMARY:" + escape(entry.summary()));
        if (!entry.where().isEmpty()) {
            line(out, "LOCATION:" + escape(entry.where()));
        }
        if (!entry.description().isEmpty()) {
            line(out, "DESCRIPTION:" + escape(entry.description()));
        }
        line(out, "END:VEVENT");
    }

    private static String day(LocalDate day) {
        return day.format(DateTimeFormatter.BASIC_ISO_DATE);
    }

    /** Text with backslash, semicolon, comma and line breaks escaped, and other control characters left out. */
    static String escape(String text) {
        StringBuilder out = new StringBuilder();
        String unix = text.replace("\r\n", "\n").replace('\r', '\n');
        unix.codePoints().forEach(c -> {
            switch (c) {
                case '\\' -> out.append("\\\\");
                case ';' -> out.append("\\;");
                case ',' -> out.append("\\,");
                case '\n' -> out.append("\\n");
                default -> {
                    boolean loneSurrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
                    if (c == '\t' || !Character.isISOControl(c) && !loneSurrogate) {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.toString();
    }

    /** One content line, folded so that no line has more than 75 octets and no character is torn apart. */
    static void line(StringBuilder out, String content) {
        int octets = 0;
        for (int i = 0; i < content.length(); ) {
            int c = content.codePointAt(i);
            int width = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
            if (octets + width > MOST_OCTETS) {
                out.append("\r\n ");
                octets = 1;
            }
            out.appendCodePoint(c);
            octets += width;
            i += Character.charCount(c);
        }
        out.append("\r\n");
    }
}
