package studio.stancebook.activity.web;

import io.swagger.v3.oas.annotations.Operation;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.ActivityRecord;
import studio.stancebook.activity.ChainCheck;

/** The activity record, for leads. */
@RestController
@RequestMapping("/api/v1/activity")
@RequiresPermission(Permission.READ_ACTIVITY)
class ActivityCalls {

    private final ActivityRecord activity;
    private final RecordExport export;

    ActivityCalls(ActivityRecord activity, RecordExport export) {
        this.activity = activity;
        this.export = export;
    }

    @GetMapping
    @Operation(summary = "Who did what when, the newest first")
    Page<ActivityLine> list(@ModelAttribute ActivityParameters asked, Pageable page) {
        return activity.list(asked.filter(), page);
    }

    @GetMapping("/verification")
    @Operation(summary = "Whether every line is as it was written and in its place")
    ChainCheck verify() {
        return activity.verify();
    }

    /** @param format csv or jsonl */
    @GetMapping("/export")
    @Operation(summary = "The record as a file, the oldest line first")
    void export(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute ActivityParameters asked,
            @RequestParam(defaultValue = "csv") String format,
            HttpServletResponse response)
            throws IOException {
        export.write(who, asked, format, response);
    }
}
