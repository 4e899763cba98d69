package studio.stancebook.exchange.table;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * How the letters of a text file are encoded: by its byte order mark; without one UTF-8 if all of it is valid, else
 * Windows-1252 if it holds no valid UTF-8 letter beyond ASCII. Found by one reading of the file in a small buffer.
 *
 * @param charset the encoding
 * @param markBytes bytes of the byte order mark, not part of the text
 */
record TextEncoding(Charset charset, int markBytes) {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    /**
     * @throws UnreadableTable if the bytes are no text: a NUL, or broken UTF-8, which is named with its line
     */
    static TextEncoding of(InputStream bytes) throws IOException {
        BufferedInputStream in = new BufferedInputStream(bytes, 1 << 16);
        in.mark(4);
        byte[] start = in.readNBytes(3);
        in.reset();
        TextEncoding marked = ofMark(start);
        if (marked != null && !marked.charset.equals(StandardCharsets.UTF_8)) {
            return marked;
        }
        Utf8Scan scan = Utf8Scan.of(in);
        if (scan.firstBrokenLine() == 0) {
            return marked == null ? new TextEncoding(StandardCharsets.UTF_8, 0) : marked;
        }
        if (marked != null || scan.letters() > 0) {
            throw new UnreadableTable("Line " + scan.firstBrokenLine()
                    + " holds bytes that are no UTF-8, while the rest of the file is; save the file as UTF-8.");
        }
        return new TextEncoding(WINDOWS_1252, 0);
    }

    private static @org.jspecify.annotations.Nullable TextEncoding ofMark(byte[] start) {
        String mark = new String(start, StandardCharsets.ISO_8859_1);
        if (mark.startsWith("\u00ef\u00bb\u00bf")) {
            return new TextEncoding(StandardCharsets.UTF_8, 3);
        }
        if (mark.startsWith("\u00ff\u00fe")) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 2);
        }
        return mark.startsWith("\u00fe\u00ff") ? new TextEncoding(StandardCharsets.UTF_16BE, 2) : null;
    }

    /** The letters of a file of this encoding; bytes that are none of it end the reading with a CharacterCodingException. */
    Reader reader(InputStream bytes) throws IOException {
        bytes.skipNBytes(markBytes);
        return new InputStreamReader(
                bytes,
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }
}
