package studio.stancebook.exchange.exporting;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.exchange.mapping.Field;
import tools.jackson.databind.json.JsonMapper;

/** Writes packages as JSON, {@code {"packages": [...]}}, each as {@code POST /packages} takes it and more beside. */
final class JsonExport implements Closeable {

    private static final JsonMapper JSON = new JsonMapper();

    private final OutputStream out;
    private String separator = "\n";

    JsonExport(Path to) throws IOException {
        out = new BufferedOutputStream(Files.newOutputStream(to), 1 << 16);
        write("{\"packages\":[");
    }

    void add(PackageView view) {
        try {
            write(separator);
            out.write(JSON.writeValueAsBytes(tree(view)));
            separator = ",\n";
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void write(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, Object> tree(PackageView view) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put(Field.NAME.key(), view.name());
        tree.put(Field.SEGMENT.key(), view.segment());
        tree.put(Field.SEGMENT_NAME.key(), view.segmentName());
        if (view.modelYear() != null) {
            tree.put(Field.MODEL_YEAR.key(), view.modelYear());
        }
        tree.put(Field.ORIGIN.key(), view.origin().key());
        tree.put("dimensions", DimensionJson.write(view.dimensions()));
        if (view.setAside() != null) {
            tree.put(Field.SET_ASIDE.key(), view.setAside().reason());
        }
        Map<String, String> reasons = ExportColumns.reasons(view);
        if (!reasons.isEmpty()) {
            tree.put(Field.VALUES_SET_ASIDE.key(), reasons);
        }
        List<String> questions = ExportColumns.questions(view);
        if (!questions.isEmpty()) {
            tree.put(Field.QUERIES.key(), questions);
        }
        return tree;
    }

    /** Ends the list; without this the file is cut off. */
    void finish() throws IOException {
        write("\n]}");
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
