package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.NamedSegment;
import studio.stancebook.exchange.mapping.RowReading;
import studio.stancebook.exchange.table.CountedInput;
import studio.stancebook.exchange.table.ReadingTime;
import studio.stancebook.exchange.table.TableLimits;
import studio.stancebook.problem.Malformed;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/**
 * Packages from JSON: an object with an array {@code packages} (as it is taken out here) or {@code items} (as lists are
 * answered), or the array alone; each element as {@code POST /packages} takes it. Rows are counted from 1.
 */
final class JsonRows implements PackageRows {

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(20)
                    .maxStringLength(TableLimits.MOST_CHARACTERS_IN_CELL)
                    .maxNameLength(200)
                    .maxNumberLength(100)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final CountedInput bytes;
    private final double size;
    private final JsonParser json;
    private final JsonPackage reader;
    private final ReadingTime time;
    private long row;

    private JsonRows(CountedInput bytes, double size, JsonParser json, JsonPackage reader, ReadingTime time) {
        this.bytes = bytes;
        this.size = size;
        this.json = json;
        this.reader = reader;
        this.time = time;
    }

    static JsonRows open(Path path, ImportOptions options) throws IOException {
        InputStream file = Files.newInputStream(path);
        ReadingTime time = new ReadingTime();
        CountedInput bytes = new CountedInput(file, time);
        try {
            JsonParser json = JSON.createParser(ObjectReadContext.empty(), bytes);
            JsonRows rows = new JsonRows(bytes, Math.max(1, Files.size(path)), json, new JsonPackage(options), time);
            rows.toArray();
            time.pause();
            return rows;
        } catch (RuntimeException | IOException failed) {
            file.close();
            throw failed;
        }
    }

    /** Goes on to the beginning of the array. */
    private void toArray() {
        try {
            JsonToken token = json.nextToken();
            if (token == JsonToken.START_OBJECT) {
                token = toMember();
            }
            if (token != JsonToken.START_ARRAY) {
                throw new Malformed(
                        "The JSON holds no list of packages: it takes {\"packages\": [...]} or the list alone.");
            }
        } catch (JacksonException broken) {
            throw refusal(broken);
        }
    }

    private @Nullable JsonToken toMember() {
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = json.currentName();
            JsonToken value = json.nextToken();
            if (name.equals("packages") || name.equals("items")) {
                return value;
            }
            json.skipChildren();
        }
        return null;
    }

    @Override
    public @Nullable RowReading next() {
        time.resume();
        try {
            if (!toNext()) {
                return null;
            }
            Object value = JsonTree.read(json, "Package " + row);
            return reader.read(row, value instanceof Map<?, ?> map ? map : null);
        } catch (JacksonException broken) {
            throw refusal(broken);
        } finally {
            time.pause();
        }
    }

    @Override
    public @Nullable NamedSegment segment() {
        time.resume();
        try {
            return toNext() ? segmentOfPackage() : null;
        } catch (JacksonException broken) {
            throw refusal(broken);
        } finally {
            time.pause();
        }
    }

    private NamedSegment segmentOfPackage() {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            json.skipChildren();
            return NamedSegment.NONE;
        }
        String text = "";
        String name = "";
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String key = json.currentName();
            String value = json.nextToken() == JsonToken.VALUE_STRING
                    ? json.getString().strip()
                    : "";
            if (key.equals(Field.SEGMENT.key())) {
                text = value;
            } else if (key.equals(Field.SEGMENT_NAME.key())) {
                name = value;
            }
            json.skipChildren();
        }
        return new NamedSegment(text, name);
    }

    private boolean toNext() {
        if (json.nextToken() == JsonToken.END_ARRAY) {
            return false;
        }
        row++;
        if (row > TableLimits.MOST_ROWS) {
            throw new Malformed("The list has more than " + TableLimits.MOST_ROWS + " packages.");
        }
        return true;
    }

    private Malformed refusal(JacksonException broken) {
        TokenStreamLocation place = broken.getLocation() == null ? json.currentLocation() : broken.getLocation();
        return new Malformed("The JSON cannot be read in line " + place.getLineNr() + ", column " + place.getColumnNr()
                + ", at package " + Math.max(1, row) + ".");
    }

    @Override
    public double share() {
        return Math.min(1, bytes.count() / size);
    }

    @Override
    public void close() throws IOException {
        json.close();
        bytes.close();
    }
}
