package studio.stancebook.exchange.importing;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import studio.stancebook.catalogue.NewPackage;

/** Packages that were written, in ascending order of their ids, each with the row it came from, in 44 bytes each. */
final class WrittenRows {

    /** Of a SHA-256. */
    private static final int BYTES = 32;

    private static final HexFormat HEX = HexFormat.of();

    private long[] ids = new long[64];
    private int[] rows = new int[64];
    private byte[] digests = new byte[64 * BYTES];
    private int size;

    /**
     * @param id greater than those before, as the catalogue numbers what is brought in
     * @param digest of the dimensions, in hexadecimal
     */
    void add(long id, long row, String digest) {
        if (size == ids.length) {
            ids = Arrays.copyOf(ids, 2 * size);
            rows = Arrays.copyOf(rows, 2 * size);
            digests = Arrays.copyOf(digests, 2 * size * BYTES);
        }
        ids[size] = id;
        System.arraycopy(HEX.parseHex(digest), 0, digests, size * BYTES, BYTES);
        rows[size++] = Math.toIntExact(row);
    }

    int size() {
        return size;
    }

    /** The packages, as a view. */
    List<NewPackage> written() {
        return new AbstractList<>() {
            @Override
            public NewPackage get(int index) {
                return new NewPackage(ids[index], HEX.formatHex(digests, index * BYTES, (index + 1) * BYTES));
            }

            @Override
            public int size() {
                return size;
            }
        };
    }

    /** The row that a package came from. */
    int rowOf(long id) {
        return rows[Arrays.binarySearch(ids, 0, size, id)];
    }
}
