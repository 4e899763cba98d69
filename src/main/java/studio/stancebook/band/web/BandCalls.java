package studio.stancebook.band.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.band.internal.WrittenSetting;
import studio.stancebook.problem.ExpectedVersion;

/** The bands of a segment. */
@RestController
@RequestMapping("/api/v1/segments/{segment}/bands")
class BandCalls {

    private final Bands bands;

    BandCalls(Bands bands) {
        this.bands = bands;
    }

    /** The bands in force, in the order of the measures. */
    @GetMapping
    Page<BandAnswer> list(@PathVariable String segment, Pageable page) {
        return part(List.copyOf(bands.current(segment).values()), page);
    }

    /** The newest version, which may withdraw the band. */
    @GetMapping("/{measure}")
    ResponseEntity<BandAnswer> get(@PathVariable String segment, @PathVariable String measure) {
        return answer(HttpStatus.OK, bands.get(segment, measure));
    }

    /** Sets a band, or withdraws it with the method none; If-Match is needed where there is a version already. */
    @PutMapping("/{measure}")
    @RequiresPermission(Permission.SET_BANDS)
    ResponseEntity<BandAnswer> set(
            @PathVariable String segment,
            @PathVariable String measure,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody WrittenSetting written,
            @AuthenticationPrincipal SignedIn who) {
        ExpectedVersion expected = ifMatch == null ? null : ExpectedVersion.ofIfMatch(ifMatch);
        Band band = written.withdraws()
                ? bands.withdraw(segment, measure, written.reasonText(), expected, who.author())
                : bands.set(segment, measure, written.setting(), written.reasonText(), expected, who.author());
        return answer(band.version() == 1 ? HttpStatus.CREATED : HttpStatus.OK, band);
    }

    /** All versions, newest first. */
    @GetMapping("/{measure}/versions")
    Page<BandAnswer> versions(@PathVariable String segment, @PathVariable String measure, Pageable page) {
        return part(bands.history(segment, measure), page);
    }

    private static ResponseEntity<BandAnswer> answer(HttpStatus status, Band band) {
        return ResponseEntity.status(status)
                .eTag(ExpectedVersion.tag(band.version()))
                .body(BandAnswer.of(band));
    }

    private static Page<BandAnswer> part(List<Band> all, Pageable page) {
        int from = (int) Math.min(page.getOffset(), all.size());
        int to = (int) Math.min(page.getOffset() + page.getPageSize(), all.size());
        return new PageImpl<>(all.subList(from, to).stream().map(BandAnswer::of).toList(), page, all.size());
    }
}
