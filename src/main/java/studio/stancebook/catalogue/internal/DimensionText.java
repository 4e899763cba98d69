package studio.stancebook.catalogue.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Dimension sets as the text in which they are kept. */
public final class DimensionText {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};

    private DimensionText() {}

    static String write(DimensionSet set) {
        return JSON.writeValueAsString(DimensionJson.write(set));
    }

    static String writeRecorded(DimensionSet set) {
        return JSON.writeValueAsString(DimensionJson.writeRecorded(set));
    }

    static DimensionSet read(String dimensions, String recorded, Origin origin) {
        DimensionSet set = DimensionJson.read(JSON.readValue(dimensions, TREE), origin);
        return DimensionJson.withRecorded(set, JSON.readValue(recorded, TREE));
    }

    /** Without who recorded it and when. */
    static DimensionSet read(String dimensions, Origin origin) {
        return DimensionJson.read(JSON.readValue(dimensions, TREE), origin);
    }

    /** The same for the same values, whatever their origins and uncertainties: SHA-256 in hexadecimal. */
    public static String digest(DimensionSet set) {
        Map<String, Object> tree = DimensionJson.write(set);
        tree.remove("uncertainties");
        tree.remove("origins");
        return sha256(JSON.writeValueAsString(tree));
    }

    static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
