package studio.stancebook.exchange.web;

import org.springframework.core.io.Resource;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.PackageListParameters;

/** Taking packages out by one call; whoever may read them may take them out. */
@RestController
class ExportCalls {

    private final ExportAnswer answer;

    ExportCalls(ExportAnswer answer) {
        this.answer = answer;
    }

    /** @param format csv, xlsx or json */
    @GetMapping("/api/v1/packages/export")
    ResponseEntity<Resource> takeOut(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute PackageListParameters asked,
            @RequestParam(defaultValue = "csv") String format) {
        return answer.of(asked, format, who);
    }
}
