package studio.stancebook.exchange.table;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * The shared strings of a workbook, unpacked into a file beside it and read from there one by one, so that a million of
 * them cost four megabytes of memory and not a hundred.
 */
final class SharedStrings implements Closeable {

    private static final long MOST_BYTES = 512L << 20;
    private static final int MOST_STRINGS = 4_000_000;
    private static final String NOT_WRITTEN = "The texts of a workbook could not be written to a file";

    private final Path file;
    private final @Nullable FileChannel channel;
    private int[] ends;
    private int count;

    private SharedStrings(Path file, @Nullable FileChannel channel, int[] ends, int count) {
        this.file = file;
        this.channel = channel;
        this.ends = ends;
        this.count = count;
    }

    /** Unpacks the strings of a part into a new file in {@code folder}, which is deleted on closing. */
    static SharedStrings unpack(WorkbookParts parts, @Nullable String part, Path folder) throws IOException {
        Path file = Files.createTempFile(folder, "strings", ".tmp");
        SharedStrings strings = new SharedStrings(file, null, new int[1024], 0);
        try {
            if (part != null) {
                strings.unpack(parts, part);
            }
            return new SharedStrings(
                    file,
                    FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.DELETE_ON_CLOSE),
                    strings.ends,
                    strings.count);
        } catch (RuntimeException | IOException failed) {
            Files.deleteIfExists(file);
            throw failed;
        }
    }

    private void unpack(WorkbookParts parts, String part) throws IOException {
        try (XmlGuard bytes = parts.open(part, MOST_BYTES);
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
            if (bytes != null) {
                unpack(WorkbookXml.open(bytes), out);
            }
        } catch (XMLStreamException | RuntimeException | IOException broken) {
            throw WorkbookXml.refusal(part, broken);
        }
    }

    private void unpack(XMLStreamReader xml, OutputStream out) throws XMLStreamException {
        CellText text = new CellText();
        int end = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            text.accept(event, xml, 0);
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("si")) {
                byte[] encoded = text.take().getBytes(StandardCharsets.UTF_8);
                write(encoded, out);
                end += encoded.length;
                add(end);
            }
        }
        flush(out);
    }

    /** That there is no room for them is no fault of the workbook. */
    private static void write(byte[] encoded, OutputStream out) {
        try {
            out.write(encoded);
        } catch (IOException noRoom) {
            throw new UncheckedIOException(NOT_WRITTEN, noRoom);
        }
    }

    private static void flush(OutputStream out) {
        try {
            out.flush();
        } catch (IOException noRoom) {
            throw new UncheckedIOException(NOT_WRITTEN, noRoom);
        }
    }

    private void add(int end) {
        if (count == MOST_STRINGS) {
            throw new TableTooLarge("The workbook has more than " + MOST_STRINGS + " different texts.");
        }
        if (count == ends.length) {
            ends = Arrays.copyOf(ends, 2 * count);
        }
        ends[count++] = end;
    }

    /** The string of an index; null when there is none. */
    @Nullable
    String get(int index) throws IOException {
        if (index < 0 || index >= count || channel == null) {
            return null;
        }
        int from = index == 0 ? 0 : ends[index - 1];
        ByteBuffer bytes = ByteBuffer.allocate(ends[index] - from);
        while (bytes.hasRemaining() && channel.read(bytes, from + bytes.position()) >= 0) {
            // until the whole string is there
        }
        return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    }

    @Override
    public void close() throws IOException {
        if (channel != null) {
            channel.close();
        }
    }
}
