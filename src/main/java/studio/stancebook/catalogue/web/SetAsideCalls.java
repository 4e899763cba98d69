package studio.stancebook.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.ExpectedVersion;

/** Taking packages and single values out of their class and back, and answering queries. */
@RestController
@RequestMapping("/api/v1/packages/{id}")
@RequiresPermission(Permission.RECORD_PACKAGES)
class SetAsideCalls {

    private final Catalogue catalogue;
    private final StudioMeasures measures;

    SetAsideCalls(Catalogue catalogue, StudioMeasures measures) {
        this.catalogue = catalogue;
        this.measures = measures;
    }

    /** Why something is set aside. */
    record ReasonBody(@Nullable String reason) {

        String text() {
            return Objects.requireNonNullElse(reason, "");
        }
    }

    /** What was found about a query. */
    record SettlementBody(@Nullable String answer) {

        String text() {
            return Objects.requireNonNullElse(answer, "");
        }
    }

    @Operation(summary = "Set a package aside: it stays recorded but does not count in its class")
    @PutMapping("/set-aside")
    ResponseEntity<PackageAnswer> setAside(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody ReasonBody body) {
        return answer(catalogue.setAside(id, ExpectedVersion.ofIfMatch(ifMatch), body.text(), who.author()));
    }

    @Operation(summary = "Take a package back into its class")
    @DeleteMapping("/set-aside")
    ResponseEntity<PackageAnswer> takeBack(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        return answer(catalogue.takeBack(id, ExpectedVersion.ofIfMatch(ifMatch), who.author()));
    }

    /** @param value the key of a measure, or the name of a recorded value */
    @Operation(summary = "Set one value of a package aside: a measure, or a recorded value")
    @PutMapping("/values/{value}/set-aside")
    ResponseEntity<PackageAnswer> setValueAside(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @PathVariable String value,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody ReasonBody body) {
        ExpectedVersion expected = ExpectedVersion.ofIfMatch(ifMatch);
        return answer(catalogue.setValueAside(id, expected, value, body.text(), who.author()));
    }

    @Operation(summary = "Take one value back into the class")
    @DeleteMapping("/values/{value}/set-aside")
    ResponseEntity<PackageAnswer> takeValueBack(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @PathVariable String value,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        return answer(catalogue.takeValueBack(id, ExpectedVersion.ofIfMatch(ifMatch), value, who.author()));
    }

    @Operation(summary = "Answer a question about a package")
    @PutMapping("/queries/{query}/settlement")
    ResponseEntity<PackageAnswer> settle(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @PathVariable long query,
            @RequestBody SettlementBody body) {
        return answer(catalogue.settle(id, query, body.text(), who.author()));
    }

    @Operation(summary = "Open a question again")
    @DeleteMapping("/queries/{query}/settlement")
    ResponseEntity<PackageAnswer> reopen(@PathVariable long id, @PathVariable long query) {
        return answer(catalogue.reopen(id, query));
    }

    private ResponseEntity<PackageAnswer> answer(PackageView view) {
        return ResponseEntity.ok()
                .eTag(ExpectedVersion.tag(view.version()))
                .body(PackageAnswer.of(view, measures.current()));
    }
}
