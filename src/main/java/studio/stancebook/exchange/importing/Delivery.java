package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.Consumer;
import studio.stancebook.access.Author;
import studio.stancebook.exchange.mapping.RowReading;

/**
 * A file that somebody brings in.
 *
 * @param fileName as its sender calls it, for showing only
 * @param by who brings it in
 * @param refused takes the rows that are refused
 */
public record Delivery(PackageFile content, String fileName, Author by, Consumer<RowReading> refused) {

    /** A file whose refused rows nobody wants back. */
    public Delivery(PackageFile content, String fileName, Author by) {
        this(content, fileName, by, row -> {});
    }

    /** SHA-256 of the file, by which whoever still has it can tell that it was this one. */
    String digest() {
        try (InputStream bytes = Files.newInputStream(content.path());
                DigestInputStream read = new DigestInputStream(bytes, MessageDigest.getInstance("SHA-256"))) {
            read.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(read.getMessageDigest().digest());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
