package studio.stancebook.exchange.table;

import java.io.IOException;
import java.io.InputStream;

/** Reads bytes once to see whether they are UTF-8 (RFC 3629), without keeping them. */
final class Utf8Scan {

    private long line = 1;
    private long letters;
    private long firstBrokenLine;
    private int continuationBytes;
    private int lowestNext = 0x80;
    private int highestNext = 0xBF;

    private Utf8Scan() {}

    /** @throws UnreadableTable at a NUL byte, which no text has */
    static Utf8Scan of(InputStream in) throws IOException {
        Utf8Scan scan = new Utf8Scan();
        byte[] buffer = new byte[1 << 14];
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
            for (int i = 0; i < n; i++) {
                scan.accept(buffer[i] & 0xFF);
            }
        }
        if (scan.continuationBytes > 0) {
            scan.broken();
        }
        return scan;
    }

    /** How many letters beyond ASCII are valid. */
    long letters() {
        return letters;
    }

    /** The line, from 1, of the first byte that is not UTF-8; 0 if there is none. */
    long firstBrokenLine() {
        return firstBrokenLine;
    }

    private void accept(int b) {
        if (b == 0) {
            throw new UnreadableTable("Line " + line
                    + " holds a NUL byte: the file is binary, or UTF-16 without its mark. Save it as UTF-8.");
        }
        if (continuationBytes > 0) {
            continuation(b);
        } else {
            begin(b);
        }
    }

    private void continuation(int b) {
        if (b < lowestNext || b > highestNext) {
            broken();
            continuationBytes = 0;
            begin(b);
            return;
        }
        lowestNext = 0x80;
        highestNext = 0xBF;
        continuationBytes--;
        if (continuationBytes == 0) {
            letters++;
        }
    }

    private void begin(int b) {
        lowestNext = b == 0xE0 ? 0xA0 : b == 0xF0 ? 0x90 : 0x80;
        highestNext = b == 0xED ? 0x9F : b == 0xF4 ? 0x8F : 0xBF;
        if (b == '\n') {
            line++;
        } else if (b >= 0xC2 && b <= 0xDF) {
            continuationBytes = 1;
        } else if (b >= 0xE0 && b <= 0xEF) {
            continuationBytes = 2;
        } else if (b >= 0xF0 && b <= 0xF4) {
            continuationBytes = 3;
        } else if (b >= 0x80) {
            broken();
        }
    }

    private void broken() {
        if (firstBrokenLine == 0) {
            firstBrokenLine = line;
        }
    }
}
