package studio.stancebook.classes.layout;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Recorded;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Dimension sets as the text in which they are kept. */
public final class DimensionText {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    /** No value has this name. */
    private static final String ALL = "*";

    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};

    private DimensionText() {}

    public static String write(DimensionSet set) {
        return JSON.writeValueAsString(DimensionJson.write(set));
    }

    /** Who recorded what and when; one mark under {@value #ALL} when all values have the same. */
    public static String writeRecorded(DimensionSet set) {
        Set<Recorded> marks = new HashSet<>(set.recorded().values());
        boolean alike = marks.size() == 1 && set.recorded().keySet().equals(set.valueKeys());
        return JSON.writeValueAsString(
                alike
                        ? Map.of(ALL, DimensionJson.writeMark(marks.iterator().next()))
                        : DimensionJson.writeRecorded(set));
    }

    public static DimensionSet read(String dimensions, String recorded, Origin origin) {
        DimensionSet set = DimensionJson.read(JSON.readValue(dimensions, TREE), origin);
        Map<String, Object> marks = JSON.readValue(recorded, TREE);
        Object ofAll = marks.get(ALL);
        if (ofAll != null) {
            marks = new LinkedHashMap<>();
            for (String key : set.valueKeys()) {
                marks.put(key, ofAll);
            }
        }
        return DimensionJson.withRecorded(set, marks);
    }

    /** Without who recorded it and when. */
    public static DimensionSet read(String dimensions, Origin origin) {
        return DimensionJson.read(JSON.readValue(dimensions, TREE), origin);
    }

    /** The same for the same values, whatever their origins and uncertainties: SHA-256 in hexadecimal. */
    public static String digest(DimensionSet set) {
        Map<String, Object> tree = DimensionJson.write(set);
        tree.remove("uncertainties");
        tree.remove("origins");
        return sha256(JSON.writeValueAsString(tree));
    }

    public static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
