package studio.stancebook.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * One member of a gzip file (RFC 1952) made of pieces that were deflated apart (RFC 1951). Each piece ends at a byte with an
 * empty block and refers to nothing before it, so that any of them may follow each other; none of them is the last block,
 * which is an empty one.
 */
final class PiecedGzip {

    /** Magic number, method 8, no flags, no time, no extra flags, unknown system: RFC 1952, 2.3. */
    private static final byte[] HEADER = {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, (byte) 0xff};

    /** An empty last block with fixed codes: RFC 1951, 3.2.6. */
    private static final byte[] LAST_BLOCK = {3, 0};

    private static final int TRAILER = 8;

    private final ByteArrayOutputStream body = new ByteArrayOutputStream();
    private final CRC32 check = new CRC32();
    private int plainLength;

    /** A text as a piece, at a level of {@link Deflater}. */
    static byte[] deflated(byte[] plain, int level) {
        Deflater deflater = new Deflater(level, true);
        try {
            deflater.setInput(plain);
            ByteArrayOutputStream piece = new ByteArrayOutputStream();
            byte[] buffer = new byte[8192];
            int n;
            do {
                n = deflater.deflate(buffer, 0, buffer.length, Deflater.SYNC_FLUSH);
                piece.write(buffer, 0, n);
            } while (n == buffer.length);
            return piece.toByteArray();
        } finally {
            deflater.end();
        }
    }

    /** Appends a text that was deflated before. */
    PiecedGzip add(byte[] plain, byte[] deflated) {
        body.writeBytes(deflated);
        check.update(plain);
        plainLength += plain.length;
        return this;
    }

    /** How many bytes {@link #writeTo} writes. */
    int length() {
        return HEADER.length + body.size() + LAST_BLOCK.length + TRAILER;
    }

    void writeTo(OutputStream out) throws IOException {
        out.write(HEADER);
        body.writeTo(out);
        out.write(LAST_BLOCK);
        out.write(ByteBuffer.allocate(TRAILER)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt((int) check.getValue())
                .putInt(plainLength)
                .array());
    }
}
