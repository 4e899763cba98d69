package studio.stancebook.exchange.table;

import java.util.concurrent.ThreadLocalRandom;

/** Counts the different names of elements and attributes in the tags of a document, from their bytes. */
final class XmlNames {

    /** Most different names; all of ECMA-376 has some thousand, one part some dozen. */
    static final int MOST = 2000;

    private static final int SLOTS = 1 << 12;
    private static final long START = ThreadLocalRandom.current().nextLong() | 1;
    private static final long FACTOR = ThreadLocalRandom.current().nextLong() | 5;

    /** Hashes of the names that were seen, each in the first free slot from its own on; 0 where none is. */
    private final long[] seen = new long[SLOTS];

    private int count;
    private long hash;
    private boolean inName;

    /** Begins a tag. */
    void begin() {
        inName = false;
    }

    /**
     * Takes the next byte of a tag that is outside of quotation marks.
     *
     * @return whether there are too many names now
     */
    boolean accept(int b) {
        boolean ofName = b > ' ' && b != '=' && b != '/' && b != '>' && b != '"' && b != '\'';
        if (ofName) {
            hash = (inName ? hash : START) * FACTOR + b;
        } else if (inName) {
            note(hash == 0 ? 1 : hash);
        }
        inName = ofName;
        return count > MOST;
    }

    private void note(long name) {
        int slot = (int) ((name * 0x9E3779B97F4A7C15L) >>> 52);
        while (seen[slot] != 0 && seen[slot] != name) {
            slot = (slot + 1) % SLOTS;
        }
        if (seen[slot] == 0) {
            seen[slot] = name;
            count++;
        }
    }
}
