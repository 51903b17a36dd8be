package org.steelyard.report.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The mark of an output that stands alone. A text ends in a comment with the checksum of all before it, so that a word
 * added or taken away is seen. A workbook is known by its creator and by times that this program alone gives, and that
 * every other program replaces when it saves.
 */
public final class OutputMark {

    /** Who is said to have made a workbook. */
    public static final String CREATOR = "Steelyard";

    /** Of each part of a workbook's archive. */
    public static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private static final String WORDS = "Written by Steelyard; sha256 of all above: ";
    private static final Pattern LAST =
            Pattern.compile("(# |<!-- )" + Pattern.quote(WORDS) + "([0-9a-f]{64})( -->)?\n");
    private static final int LONGEST = WORDS.length() + 64 + 10;
    private static final String CORE = "docProps/core.xml";
    private static final int LONGEST_CORE_BYTES = 1 << 16;

    private OutputMark() {}

    /** A text in YAML or HTML with its mark. */
    static String marked(String text) throws IOException {
        String whole = text.endsWith("\n") ? text : text + "\n";
        byte[] bytes = whole.getBytes(StandardCharsets.UTF_8);
        String sum = FileSum.of(new ByteArrayInputStream(bytes)).sha256();
        boolean isPage = whole.startsWith("<!");
        return whole + (isPage ? "<!-- " : "# ") + WORDS + sum + (isPage ? " -->" : "") + "\n";
    }

    /** Whether a file carries the mark and is as it was written. */
    static boolean isOn(Path file) {
        try {
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && (isOnText(file) || isOnBook(file));
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isOnText(Path file) throws IOException {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "r")) {
            long from = Math.max(0, open.length() - LONGEST);
            byte[] tail = new byte[(int) (open.length() - from)];
            open.seek(from);
            open.readFully(tail);
            String end = new String(tail, StandardCharsets.ISO_8859_1);
            Matcher mark = LAST.matcher(end);
            return mark.find()
                    && mark.end() == end.length()
                    && FileSum.ofFirst(file, from + mark.start()).sha256().equals(mark.group(2));
        }
    }

    private static boolean isOnBook(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry core = zip.getEntry(CORE);
            if (core == null || zip.stream().anyMatch(entry -> !TIME.equals(entry.getTimeLocal()))) {
                return false;
            }
            try (InputStream in = zip.getInputStream(core)) {
                String text = new String(in.readNBytes(LONGEST_CORE_BYTES), StandardCharsets.UTF_8);
                return text.contains(">" + CREATOR + "</dc:creator>");
            }
        } catch (IOException e) {
            return false;
        }
    }
}
