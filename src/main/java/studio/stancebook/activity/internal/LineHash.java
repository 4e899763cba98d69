package studio.stancebook.activity.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.FieldChange;

/**
 * The hash of a line: SHA-256 (FIPS 180-4) in lower-case hexadecimal, over a text in which every part is a netstring: its
 * length in bytes of UTF-8, a colon, the part, a comma. So no two lines have the same text. The parts are number, time (ISO
 * 8601, UTC), id of the person or nothing, name, action, kind, subject, title; then for each change the field, {@code -} or
 * {@code +} and what was, {@code -} or {@code +} and what is; then the hash of the line before.
 *
 * <p>Netstrings: D. J. Bernstein, 1997; the form is given here from memory.
 */
final class LineHash {

    private final MessageDigest digest = sha256();

    private LineHash() {}

    static String of(ActivityLine line) {
        LineHash hash = new LineHash();
        hash.add(String.valueOf(line.line()));
        hash.add(line.at().toString());
        hash.add(line.byId() == null ? "" : line.byId().toString());
        hash.add(line.by());
        hash.add(line.action());
        hash.add(line.kind());
        hash.add(line.subject());
        hash.add(line.title());
        line.changes().forEach(hash::add);
        hash.add(line.previousHash());
        return HexFormat.of().formatHex(hash.digest.digest());
    }

    private void add(FieldChange change) {
        add(change.field());
        add(marked(change.from()));
        add(marked(change.to()));
    }

    /** So that nothing and an empty text differ. */
    private static String marked(@Nullable String value) {
        return value == null ? "-" : "+" + value;
    }

    private void add(String part) {
        byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
        digest.update((byte) ',');
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
