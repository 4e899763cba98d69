package studio.stancebook.exchange.importing;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Remembers in which row a text came first, in 12 to 24 bytes a text however long it is: open addressing over the first
 * 64 bits of its SHA-256. Two texts among a million are taken for one with a probability of 3 in 10^8.
 */
final class KeyIndex {

    private long[] hashes = new long[1 << 10];
    private int[] rows = new int[1 << 10];
    private int size;
    private final MessageDigest digest = sha256();

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Every Java platform has SHA-256", missing);
        }
    }

    /** The row in which the text came first; 0 if this is the first time, which is then remembered. */
    int firstRow(String text, long row) {
        if (2 * size >= hashes.length) {
            grow();
        }
        long hash = hash(text);
        int place = place(hash);
        if (rows[place] == 0) {
            hashes[place] = hash;
            rows[place] = Math.toIntExact(row);
            size++;
            return 0;
        }
        return rows[place];
    }

    private long hash(String text) {
        return ByteBuffer.wrap(digest.digest(text.getBytes(StandardCharsets.UTF_8)))
                .getLong();
    }

    private int place(long hash) {
        int mask = hashes.length - 1;
        int place = (int) hash & mask;
        while (rows[place] != 0 && hashes[place] != hash) {
            place = (place + 1) & mask;
        }
        return place;
    }

    private void grow() {
        long[] oldHashes = hashes;
        int[] oldRows = rows;
        hashes = new long[2 * oldHashes.length];
        rows = new int[2 * oldRows.length];
        for (int i = 0; i < oldHashes.length; i++) {
            if (oldRows[i] != 0) {
                int place = place(oldHashes[i]);
                hashes[place] = oldHashes[i];
                rows[place] = oldRows[i];
            }
        }
    }
}
