package studio.stancebook.operations.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import studio.stancebook.operations.backup.BackupTarget;

/** An answer that becomes the download of a backup once there is something to send. */
record BackupAnswer(String name, HttpServletResponse response) implements BackupTarget {

    static final String MEDIA_TYPE = "application/gzip";

    @Override
    public OutputStream open() throws IOException {
        ContentDisposition file = ContentDisposition.attachment().filename(name).build();
        response.setContentType(MEDIA_TYPE);
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, file.toString());
        return response.getOutputStream();
    }
}
