package studio.stancebook.exchange.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RequestPart;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.Origin;
import studio.stancebook.edge.Sender;
import studio.stancebook.exchange.importing.Delivery;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.Importer;
import studio.stancebook.exchange.importing.PackageFile;
import studio.stancebook.exchange.importing.ReceivedFiles;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Malformed;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Bringing packages in by one call. */
@RestController
class ImportCalls {

    private static final TypeReference<Map<String, Object>> OBJECT = new TypeReference<>() {};

    private static final TypeReference<Map<String, String>> TEXTS = new TypeReference<>() {};

    /** More segments than this are not told by other words in one file. */
    static final int MOST_POINTED = 200;

    private final Importer importer;
    private final ReceivedFiles files;
    private final JsonMapper json;

    ImportCalls(Importer importer, ReceivedFiles files, JsonMapper json) {
        this.importer = importer;
        this.files = files;
        this.json = json;
    }

    /**
     * Brings in a CSV file, a workbook or JSON.
     *
     * @param mapping what the columns hold; without one it is guessed from the headings
     * @param segments keys of segments, by the words of the file that stand for them
     * @param update change packages that are there where a row differs, instead of refusing the row
     * @param sheet of a workbook; the first without it
     */
    @PostMapping(path = "/api/v1/packages/imports", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @RequiresPermission(Permission.RECORD_PACKAGES)
    ResponseEntity<?> bringIn(
            @AuthenticationPrincipal SignedIn who,
            @RequestPart("file") MultipartFile file,
            @RequestParam(required = false) @Nullable String mapping,
            @RequestParam(required = false) @Nullable String segments,
            @RequestParam(defaultValue = "false") boolean dryRun,
            @RequestParam(defaultValue = "false") boolean partial,
            @RequestParam(defaultValue = "false") boolean createSegments,
            @RequestParam(defaultValue = "false") boolean update,
            @RequestParam(defaultValue = "specification") String origin,
            @RequestParam(required = false) @Nullable String sheet,
            HttpServletRequest request) {
        requireMayCreate(who, createSegments);
        ImportOptions options =
                new ImportOptions(dryRun, partial, createSegments, origin(origin), update, pointed(segments), null);
        Path kept = files.keep(file);
        try {
            PackageFile packages = PackageFile.of(kept, mapping == null ? null : tree(mapping), sheet);
            ImportReport report = importer.run(
                    new Delivery(packages, TextLimit.shown(file.getOriginalFilename()), who.author()),
                    options,
                    share -> Sender.requirePresent(request));
            return answer(report, options);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } finally {
            ReceivedFiles.delete(kept);
        }
    }

    private static ResponseEntity<?> answer(ImportReport report, ImportOptions options) {
        boolean refused = !options.dryRun() && !options.partial() && report.rejected() > 0;
        return refused
                ? ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                        .body(RefusedImport.of(report))
                : ResponseEntity.ok(ReportAnswer.of(report));
    }

    /** A segment is the lead's to make, by this way as by any other. */
    static void requireMayCreate(SignedIn who, boolean createSegments) {
        if (createSegments && !who.may(Permission.MANAGE_SEGMENTS)) {
            throw new Forbidden("Segments are made by the lead of the studio; bring the file in without making any.");
        }
    }

    private static Origin origin(String key) {
        return Origin.ofKey(key)
                .orElseThrow(() -> Malformed.ofField(
                        "origin",
                        "\"" + TextLimit.shown(key) + "\" is none of measured, drawing, specification, derived."));
    }

    private Map<String, String> pointed(@Nullable String segments) {
        if (segments == null) {
            return Map.of();
        }
        try {
            Map<String, String> pointed = json.readValue(segments, TEXTS);
            if (pointed.size() <= MOST_POINTED && !pointed.containsValue(null)) {
                return pointed;
            }
        } catch (JacksonException broken) {
            // told below
        }
        throw Malformed.ofField(
                "segments",
                "The segments are no JSON object such as {\"Pick-up\": \"pickup\"} of at most " + MOST_POINTED
                        + " entries, from the words of the file to keys of segments.");
    }

    private Map<String, Object> tree(String mapping) {
        try {
            return json.readValue(mapping, OBJECT);
        } catch (JacksonException broken) {
            throw Malformed.ofField(
                    "mapping",
                    "The mapping is no JSON object such as {\"wb\": {\"dimension\": \"wheelbase\", \"unit\": \"mm\"}}.");
        }
    }
}
