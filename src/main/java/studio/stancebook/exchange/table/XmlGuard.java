package studio.stancebook.exchange.table;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Lets through the plain XML that workbooks are made of and stops what a parser would gather in memory without end: a
 * tag of more than 64 kB, elements nested more than 64 deep, more than 2,000 different names, comments, document types,
 * further processing instructions, other encodings than UTF-8. It also ends the reading after a number of bytes, and when
 * the time for it is over.
 */
final class XmlGuard extends FilterInputStream {

    private static final int LONGEST_TAG = 1 << 16;
    private static final int MOST_DEPTH = 64;

    private enum In {
        TEXT,
        TAG,
        INSTRUCTION
    }

    private final String part;
    private final long most;
    private final ReadingTime time;
    private final XmlNames names = new XmlNames();
    private long read;
    private int depth;
    private In in = In.TEXT;
    private int tagLength;
    private int quote;
    private boolean closing;
    private int previous;
    private final StringBuilder instruction = new StringBuilder();

    /**
     * @param part the name of the part, for messages
     * @param most how many bytes may be read
     */
    XmlGuard(InputStream bytes, String part, long most, ReadingTime time) {
        super(bytes);
        this.time = time;
        this.part = part;
        this.most = most;
    }

    /** Bytes read so far. */
    long bytesRead() {
        return read;
    }

    @Override
    public int read() throws IOException {
        int b = super.read();
        if (b >= 0) {
            accept(b);
        }
        return b;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        time.check();
        int n = super.read(buffer, offset, length);
        for (int i = 0; i < n; i++) {
            accept(buffer[offset + i] & 0xFF);
        }
        return n;
    }

    private void accept(int b) {
        read++;
        if (read > most) {
            throw new TableTooLarge("The part " + part + " of the workbook unpacks to more than " + most + " bytes.");
        }
        if (b == 0) {
            throw refused("a NUL byte");
        }
        switch (in) {
            case TEXT -> text(b);
            case TAG -> tag(b);
            case INSTRUCTION -> instruction(b);
        }
        previous = b;
    }

    private void text(int b) {
        if (b == '<') {
            in = In.TAG;
            tagLength = 0;
            quote = 0;
            previous = b;
            names.begin();
        }
    }

    private void tag(int b) {
        if (++tagLength > LONGEST_TAG) {
            throw refused("a tag of more than " + LONGEST_TAG + " bytes");
        }
        if (tagLength == 1 && b == '!') {
            throw refused("a comment, a document type or a CDATA section");
        }
        if (tagLength == 1 && b == '?') {
            beginInstruction();
        } else if (quote == 0 && b == '>') {
            in = In.TEXT;
            nest();
        } else if (quote == 0 && (b == '"' || b == '\'')) {
            quote = b;
        } else if (quote == b) {
            quote = 0;
        } else if (tagLength == 1) {
            closing = b == '/';
        }
        if (quote == 0 && names.accept(b)) {
            throw refused("more than " + XmlNames.MOST + " different names");
        }
    }

    /** What the end of a tag means: an element ended, began, or did both. */
    private void nest() {
        if (closing) {
            depth--;
        } else if (previous != '/' && ++depth > MOST_DEPTH) {
            throw refused("elements nested more than " + MOST_DEPTH + " deep");
        }
    }

    private void beginInstruction() {
        if (!instruction.isEmpty()) {
            throw refused("a second processing instruction");
        }
        in = In.INSTRUCTION;
    }

    private void instruction(int b) {
        instruction.append((char) b);
        if (instruction.length() > 200) {
            throw refused("a processing instruction of more than 200 bytes");
        }
        if (previous == '?' && b == '>') {
            in = In.TEXT;
            checkEncoding(instruction.toString().toLowerCase(java.util.Locale.ROOT));
        }
    }

    private void checkEncoding(String declaration) {
        boolean utf8 =
                !declaration.contains("encoding") || declaration.contains("utf-8") || declaration.contains("us-ascii");
        if (!utf8) {
            throw refused("another encoding than UTF-8");
        }
    }

    private UnreadableTable refused(String what) {
        return new UnreadableTable("The part " + part + " of the workbook holds " + what
                + ", which no spreadsheet program writes; save the workbook anew.");
    }
}
