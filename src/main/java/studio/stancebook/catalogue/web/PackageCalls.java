package studio.stancebook.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import java.net.URI;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.ExpectedVersion;

/** Benchmark packages. */
@RestController
@RequestMapping("/api/v1/packages")
class PackageCalls {

    private final Catalogue catalogue;
    private final StudioMeasures measures;

    PackageCalls(Catalogue catalogue, StudioMeasures measures) {
        this.catalogue = catalogue;
        this.measures = measures;
    }

    @Operation(summary = "Benchmark packages with their measures, by filter and in an order")
    @GetMapping
    Page<PackageAnswer> list(@ModelAttribute PackageFilterParameters asked, Pageable page) {
        Page<PackageSummary> found = catalogue.search(Parameters.filter(asked), page);
        List<Long> ids = found.map(PackageSummary::id).getContent();
        MeasureRegistry registry = measures.current();
        List<PackageAnswer> answers = catalogue.getAll(ids).stream()
                .map(view -> PackageAnswer.of(view, registry))
                .toList();
        return new PageImpl<>(answers, page, found.getTotalElements());
    }

    @Operation(summary = "Record a package; values out of range and values that do not close are refused")
    @PostMapping
    @RequiresPermission(Permission.RECORD_PACKAGES)
    ResponseEntity<PackageAnswer> add(@AuthenticationPrincipal SignedIn who, @RequestBody PackageBody body) {
        PackageView added = catalogue.add(body.draft(), who.author());
        return ResponseEntity.created(URI.create("/api/v1/packages/" + added.id()))
                .eTag(ExpectedVersion.tag(added.version()))
                .body(PackageAnswer.of(added, measures.current()));
    }

    @Operation(summary = "A package with its measures")
    @GetMapping("/{id}")
    ResponseEntity<PackageAnswer> get(@PathVariable long id) {
        return answer(catalogue.get(id));
    }

    @Operation(summary = "Change a package")
    @PutMapping("/{id}")
    @RequiresPermission(Permission.RECORD_PACKAGES)
    ResponseEntity<PackageAnswer> change(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody PackageBody body) {
        ExpectedVersion expected = ExpectedVersion.ofIfMatch(ifMatch);
        return answer(catalogue.change(id, expected, body.draft(), who.author()));
    }

    @Operation(summary = "Delete a package")
    @DeleteMapping("/{id}")
    @RequiresPermission(Permission.RECORD_PACKAGES)
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void delete(
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        catalogue.delete(id, ExpectedVersion.ofIfMatch(ifMatch));
    }

    private ResponseEntity<PackageAnswer> answer(PackageView view) {
        return ResponseEntity.ok()
                .eTag(ExpectedVersion.tag(view.version()))
                .body(PackageAnswer.of(view, measures.current()));
    }
}
