package studio.stancebook.operations.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.operations.backup.Backups;

/** The page from which a lead takes a backup home. */
@Controller
@RequestMapping("/studio/backup")
@RequiresPermission(Permission.TAKE_BACKUPS)
class BackupPage {

    private final Backups backups;

    BackupPage(Backups backups) {
        this.backups = backups;
    }

    @GetMapping
    String show() {
        return "operations/backup";
    }

    @PostMapping
    void make(HttpServletResponse response) throws IOException {
        backups.write(new BackupAnswer(backups.newName(), response));
    }
}
