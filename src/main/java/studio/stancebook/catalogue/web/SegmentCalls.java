package studio.stancebook.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import java.net.URI;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.SegmentIssue;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.ExpectedVersion;

/** Segments. */
@RestController
@RequestMapping("/api/v1/segments")
class SegmentCalls {

    private final Segments segments;
    private final Catalogue catalogue;

    SegmentCalls(Segments segments, Catalogue catalogue) {
        this.segments = segments;
        this.catalogue = catalogue;
    }

    /** A segment as it is sent; the key only when it is made. */
    record SegmentBody(
            @Nullable String key,
            @Nullable String name,
            @Nullable String description) {

        String keyText() {
            return Objects.requireNonNullElse(key, "").strip();
        }

        String nameText() {
            return Objects.requireNonNullElse(name, "");
        }

        String descriptionText() {
            return Objects.requireNonNullElse(description, "");
        }
    }

    /** @param revision counts the changes of its class */
    record SegmentAnswer(String key, String name, String description, int packages, long revision) {

        static SegmentAnswer of(SegmentView segment) {
            return new SegmentAnswer(
                    segment.key(), segment.name(), segment.description(), segment.packages(), segment.revision());
        }
    }

    @Operation(summary = "The segments, by name")
    @GetMapping
    Page<SegmentAnswer> list(Pageable page) {
        return segments.page(page).map(SegmentAnswer::of);
    }

    @Operation(summary = "Make a segment")
    @PostMapping
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    ResponseEntity<SegmentAnswer> create(@RequestBody SegmentBody body) {
        SegmentView made = segments.create(body.keyText(), body.nameText(), body.descriptionText());
        return ResponseEntity.created(URI.create("/api/v1/segments/" + made.key()))
                .eTag(ExpectedVersion.tag(made.version()))
                .body(SegmentAnswer.of(made));
    }

    @Operation(summary = "A segment")
    @GetMapping("/{key}")
    ResponseEntity<SegmentAnswer> get(@PathVariable String key) {
        return answer(segments.get(key));
    }

    @Operation(summary = "Change name and description of a segment")
    @PutMapping("/{key}")
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    ResponseEntity<SegmentAnswer> change(
            @PathVariable String key,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody SegmentBody body) {
        ExpectedVersion expected = ExpectedVersion.ofIfMatch(ifMatch);
        return answer(segments.change(key, expected, body.nameText(), body.descriptionText()));
    }

    /** The questions about packages of the segment that nobody has answered yet, newest first. */
    @Operation(summary = "The open questions about packages of a segment, newest first")
    @GetMapping("/{key}/queries")
    Page<SegmentIssue> queries(@PathVariable String key, Pageable page) {
        return catalogue.openQueries(segments.get(key), page);
    }

    private static ResponseEntity<SegmentAnswer> answer(SegmentView segment) {
        return ResponseEntity.ok().eTag(ExpectedVersion.tag(segment.version())).body(SegmentAnswer.of(segment));
    }
}
