package studio.stancebook.exchange.table;

import java.io.IOException;
import java.nio.file.Path;

/** Reads files to their end, in a process of its own; prints for each how many rows it has or by what it was refused. */
final class ReadInLittleMemory {

    private ReadInLittleMemory() {}

    /** @param args the files */
    public static void main(String[] args) throws IOException {
        for (String name : args) {
            System.out.println(Path.of(name).getFileName() + " " + read(Path.of(name)));
        }
    }

    private static String read(Path file) throws IOException {
        long rows = 0;
        try (Table table = TableFile.of(file).open(null)) {
            while (table.next() != null) {
                rows++;
            }
            return rows + " rows";
        } catch (TableTooLarge | UnreadableTable | NotATable refused) {
            return refused.getClass().getSimpleName();
        }
    }
}
