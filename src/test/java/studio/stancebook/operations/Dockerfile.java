package studio.stancebook.operations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** The instructions of the Dockerfile in their order, one a line. */
record Dockerfile(List<Instruction> instructions) {

    /**
     * @param stage 0 for what belongs to the first FROM
     */
    record Instruction(int stage, String keyword, String text) {

        /** Words of the list that an instruction in its exec form has, without looking at anything before the list. */
        List<String> execForm() {
            int from = text.indexOf('[');
            if (from < 0 || !text.endsWith("]")) {
                throw new IllegalStateException(keyword + " is not in the form that starts no shell: " + text);
            }
            return Arrays.stream(text.substring(from + 1, text.length() - 1).split(","))
                    .map(word -> word.strip().replaceAll("^\"|\"$", ""))
                    .toList();
        }
    }

    static Dockerfile read(Path file) {
        try {
            int[] stage = {-1};
            return new Dockerfile(Files.readAllLines(file).stream()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> instruction(line, stage))
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Instruction instruction(String line, int[] stage) {
        if (line.endsWith("\\")) {
            throw new IllegalStateException("One instruction a line, please: " + line);
        }
        int space = line.indexOf(' ');
        String keyword = line.substring(0, space);
        if (keyword.equals("FROM")) {
            stage[0]++;
        }
        return new Instruction(stage[0], keyword, line.substring(space + 1).strip());
    }
}
