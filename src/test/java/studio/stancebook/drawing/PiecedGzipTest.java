package studio.stancebook.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPInputStream;
import org.apache.commons.compress.compressors.gzip.GzipCompressorInputStream;
import org.junit.jupiter.api.Test;

/** What is put together is read by two readers of RFC 1952 that are not ours, as one member. */
class PiecedGzipTest {

    private final Random random = new Random(20261129);

    @Test
    void isOneMemberThatHoldsItsPiecesInOrder() throws IOException {
        for (int run = 0; run < 200; run++) {
            List<byte[]> pieces = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                pieces.add(text());
            }
            byte[] whole = joined(pieces);

            byte[] gzip = gzip(pieces);

            try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(gzip))) {
                assertArrayEquals(whole, in.readAllBytes());
            }
            ByteArrayInputStream rest = new ByteArrayInputStream(gzip);
            try (GzipCompressorInputStream in = new GzipCompressorInputStream(rest, false)) {
                assertArrayEquals(whole, in.readAllBytes());
            }
        }
    }

    @Test
    void isSmallForWhatRepeatsItself() throws IOException {
        byte[] text = "<path class=\"tape\" d=\"M0 0\"/>".repeat(5000).getBytes(StandardCharsets.UTF_8);

        assertTrue(gzip(List.of(text, text)).length < text.length / 50);
    }

    /** Empty, markup or noise, of up to some windows of 32 KB. */
    private byte[] text() {
        byte[] text = new byte[random.nextInt(4) == 0 ? 0 : random.nextInt(120_000)];
        random.nextBytes(text);
        if (random.nextBoolean()) {
            for (int i = 0; i < text.length; i++) {
                text[i] = (byte) ("<>=\"/ab".charAt(Math.floorMod(text[i], 7)));
            }
        }
        return text;
    }

    private byte[] gzip(List<byte[]> pieces) throws IOException {
        PiecedGzip gzip = new PiecedGzip();
        pieces.forEach(piece -> gzip.add(piece, PiecedGzip.deflated(piece, 1 + random.nextInt(9))));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        gzip.writeTo(out);
        assertEquals(gzip.length(), out.size());
        return out.toByteArray();
    }

    private static byte[] joined(List<byte[]> pieces) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        pieces.forEach(whole::writeBytes);
        return whole.toByteArray();
    }
}
