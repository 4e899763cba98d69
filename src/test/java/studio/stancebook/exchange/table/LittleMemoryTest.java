package studio.stancebook.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files that would not fit into memory whole, read by a process with 32 MB of it. */
class LittleMemoryTest {

    private static final String HEAP = "-Xmx32m";

    @TempDir
    Path folder;

    private interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private Path file(String name, Content content) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            content.writeTo(out);
        }
        return file;
    }

    private static void repeat(OutputStream out, String text, int times) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < times; i++) {
            out.write(bytes);
        }
    }

    /** A workbook with the sheet's XML written by {@code sheet}, its compression as bad as its content wants. */
    private Path workbook(String name, Content sheet) throws IOException {
        return file(name, out -> {
            ZipOutputStream zip = new ZipOutputStream(out);
            for (var part : TableFiles.parts("").entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                if (part.getKey().endsWith("s.xml")) {
                    sheet.writeTo(zip);
                } else {
                    zip.write(part.getValue());
                }
                zip.closeEntry();
            }
            zip.finish();
        });
    }

    /** Letters that do not compress, so that the guard against bombs has nothing to object to. */
    private static void noise(OutputStream out, int bytes) throws IOException {
        Random random = new Random(3);
        byte[] block = new byte[1 << 16];
        for (int done = 0; done < bytes; done += block.length) {
            for (int i = 0; i < block.length; i++) {
                block[i] = (byte) ('0' + random.nextInt(64) % 60);
                if (block[i] == '<' || block[i] == '>') {
                    block[i] = 'x';
                }
            }
            out.write(block);
        }
    }

    @Test
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    void everyFileIsReadOrRefused() throws IOException, InterruptedException {
        String open = "<worksheet><sheetData>";
        List<Path> files = new ArrayList<>(List.of(
                file(
                        "many.csv",
                        out -> repeat(out, "name,segment,2500,4000,1400,some more words to fill a row\n", 900_000)),
                file("line.csv", out -> repeat(out, "x".repeat(1 << 16), 1500)),
                file("quote.csv", out -> {
                    repeat(out, "a,b\n1,\"", 1);
                    repeat(out, "x\n".repeat(1 << 15), 1500);
                }),
                file("columns.csv", out -> repeat(out, "a,".repeat(1 << 15), 1000)),
                workbook("rows.xlsx", out -> {
                    repeat(out, open, 1);
                    repeat(out, "<row><c t=\"inlineStr\"><is><t>abc</t></is></c><c><v>2500.5</v></c></row>", 100);
                    noiseRows(out);
                    repeat(out, "</sheetData></worksheet>", 1);
                }),
                workbook("cell.xlsx", out -> {
                    repeat(out, open + "<row><c t=\"inlineStr\"><is><t>", 1);
                    noise(out, 60 << 20);
                }),
                workbook("tag.xlsx", out -> {
                    repeat(out, open + "<row r=\"", 1);
                    noise(out, 60 << 20);
                }),
                workbook("comment.xlsx", out -> {
                    repeat(out, open + "<!--", 1);
                    noise(out, 60 << 20);
                }),
                workbook("instruction.xlsx", out -> {
                    repeat(out, open + "<?a ", 1);
                    noise(out, 60 << 20);
                })));

        assertThat(run(files))
                .containsExactly(
                        "many.csv 899999 rows",
                        "line.csv TableTooLarge",
                        "quote.csv TableTooLarge",
                        "columns.csv TableTooLarge",
                        "rows.xlsx 200099 rows",
                        "cell.xlsx TableTooLarge",
                        "tag.xlsx UnreadableTable",
                        "comment.xlsx UnreadableTable",
                        "instruction.xlsx UnreadableTable");
    }

    private static void noiseRows(OutputStream out) throws IOException {
        Random random = new Random(4);
        for (int i = 0; i < 200_000; i++) {
            repeat(
                    out,
                    "<row><c t=\"inlineStr\"><is><t>" + Long.toString(random.nextLong(), 36) + "</t></is></c><c><v>"
                            + random.nextInt(9999) + "</v></c></row>",
                    1);
        }
    }

    private static List<String> run(List<Path> files) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                "-cp",
                System.getProperty("java.class.path"),
                ReadInLittleMemory.class.getName()));
        files.forEach(file -> command.add(file.toString()));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.contains(".csv ") || line.contains(".xlsx "))
                .toList();
        assertThat(process.waitFor()).as("%s", lines).isZero();
        return lines;
    }
}
