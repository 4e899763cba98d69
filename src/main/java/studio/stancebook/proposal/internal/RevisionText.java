package studio.stancebook.proposal.internal;

import java.util.List;
import java.util.Map;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.VerdictLine;
import studio.stancebook.band.VerdictLines;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.moves.SingleMove;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Dimensions and assessment of a revision as the text in which they are kept. */
final class RevisionText {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};
    private static final TypeReference<List<VerdictLine>> LINES = new TypeReference<>() {};

    private RevisionText() {}

    static String dimensions(DimensionSet set) {
        return JSON.writeValueAsString(DimensionJson.write(set));
    }

    static String recorded(DimensionSet set) {
        return JSON.writeValueAsString(DimensionJson.writeRecorded(set));
    }

    static DimensionSet readDimensions(String dimensions, String recorded) {
        DimensionSet set = DimensionJson.read(JSON.readValue(dimensions, TREE), Origin.DRAWING);
        return DimensionJson.withRecorded(set, JSON.readValue(recorded, TREE));
    }

    static String assessment(Assessment assessment, Map<String, List<SingleMove>> moves) {
        return JSON.writeValueAsString(VerdictLines.of(assessment, moves));
    }

    static Assessment readAssessment(String assessment) {
        return VerdictLines.read(lines(assessment));
    }

    static List<VerdictLine> lines(String assessment) {
        return JSON.readValue(assessment, LINES);
    }
}
