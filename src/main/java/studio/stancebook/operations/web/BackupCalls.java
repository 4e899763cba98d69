package studio.stancebook.operations.web;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.operations.backup.Backups;

/** The whole studio as one file, for leads. */
@RestController
@RequiresPermission(Permission.TAKE_BACKUPS)
class BackupCalls {

    private final Backups backups;

    BackupCalls(Backups backups) {
        this.backups = backups;
    }

    /** Sends a backup while it is made. If it breaks off, the file ends without its checksum and is refused later. */
    @PostMapping("/api/v1/backups")
    @ApiResponse(
            responseCode = "200",
            description = "Everything in the studio at this moment",
            content =
                    @Content(mediaType = BackupAnswer.MEDIA_TYPE, schema = @Schema(type = "string", format = "binary")))
    void makeBackup(HttpServletResponse response) throws IOException {
        backups.write(new BackupAnswer(backups.newName(), response));
    }
}
