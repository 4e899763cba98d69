package studio.stancebook.exchange.table;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Counts the bytes that were read, to tell how far a reading is, and ends it when its time is over. */
public final class CountedInput extends FilterInputStream {

    private final ReadingTime time;
    private volatile long count;

    public CountedInput(InputStream bytes, ReadingTime time) {
        super(bytes);
        this.time = time;
    }

    /** Bytes read so far. */
    public long count() {
        return count;
    }

    @Override
    public int read() throws IOException {
        int b = super.read();
        add(b < 0 ? 0 : 1);
        return b;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        time.check();
        int n = super.read(buffer, offset, length);
        add(Math.max(n, 0));
        return n;
    }

    private void add(int n) {
        count = count + n;
    }
}
