package org.nestyear.app.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.nestyear.app.service.Refusal;
import org.nestyear.records.book.RecordBook;

/** Pictures of sites, houses and nests. The bytes are kept once, whatever entries show them. */
public final class Photos {
    private static final int LARGEST_BYTES = 20 * 1024 * 1024;
    private static final int[] JPEG = {0xFF, 0xD8, 0xFF};
    private static final int[] PNG = {0x89, 'P', 'N', 'G'};
    private static final int[] RIFF = {'R', 'I', 'F', 'F'};
    private static final int[] WEBP = {'W', 'E', 'B', 'P'};
    private static final int WEBP_AT = 8;

    private final BookDesk desk;

    public Photos(RecordsDesk records) {
        this.desk = records.desk();
    }

    /**
     * Keeps a picture from a file.
     *
     * @param typed site, day and what else the entry tells, by column, with names in place of ids
     * @throws Refusal if it cannot be read, is no picture, is too large, or the entry cannot stand so
     */
    public ShownEntry add(String who, Path file, Map<String, String> typed) {
        byte[] bytes;
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw refusal(file, "the file is larger than 20 MB; expected a smaller picture.");
            }
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw refusal(file, "the file cannot be read; expected a picture.");
        }
        return add(who, String.valueOf(file.getFileName()), bytes, typed);
    }

    /** The same with the bytes at hand. */
    public ShownEntry add(String who, String name, byte[] bytes, Map<String, String> typed) {
        Map<String, String> values = new HashMap<>(typed);
        values.put("file_name", name);
        values.put("media_type", mediaType(name, bytes));
        values.put("sha256", sha256(bytes));
        // The bytes first: no entry shows what is not there, and bytes without an entry do no harm.
        desk.putPicture(values.getOrDefault("sha256", ""), bytes);
        return new RecordsDesk(desk).add(who, "photo", RecordBook.newId(), values);
    }

    private static String mediaType(String name, byte[] bytes) {
        if (begins(bytes, 0, JPEG)) {
            return "image/jpeg";
        }
        if (begins(bytes, 0, PNG)) {
            return "image/png";
        }
        if (begins(bytes, 0, RIFF) && begins(bytes, WEBP_AT, WEBP)) {
            return "image/webp";
        }
        throw refusal(Path.of(name), "the file is no picture; expected JPEG, PNG or WebP.");
    }

    private static boolean begins(byte[] bytes, int from, int[] with) {
        for (int i = 0; i < with.length; i++) {
            if (bytes.length <= from + i || (bytes[from + i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    private static Refusal refusal(Path file, String sentence) {
        return new Refusal(Refusal.Kind.BAD_INPUT, "NY-PHOTO", file.toString(), sentence, "");
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
