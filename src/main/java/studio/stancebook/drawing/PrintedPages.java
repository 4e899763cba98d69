package studio.stancebook.drawing;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.zip.Deflater;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.View;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/**
 * Pages with a part that was made before: the frame around it is drawn for each request, the part is put into it as it is
 * kept, compressed already for whoever takes gzip (studio decision 0068).
 */
@Component
public class PrintedPages {

    /** Stands in the frame where the part belongs. No text can look like it, as text is escaped. */
    private static final String PLACE = "<!--print-->";

    private static final String GZIP = "gzip";

    private final ThymeleafViewResolver frames;
    private final boolean compressing;

    PrintedPages(ThymeleafViewResolver frames, @Value("${server.compression.enabled}") boolean compressing) {
        this.frames = frames;
        this.compressing = compressing;
    }

    /**
     * The page of a template with a part in the place that the template leaves for it.
     *
     * @param frame a template that has the comment {@value #PLACE} there
     */
    public View page(String frame, Print part) {
        return (model, request, response) -> render(frame, part, model, request, response);
    }

    private void render(
            String frame,
            Print part,
            @Nullable Map<String, ?> model,
            HttpServletRequest request,
            HttpServletResponse response)
            throws Exception {
        View view = Objects.requireNonNull(
                frames.resolveViewName(frame, LocaleContextHolder.getLocale()), "There is no template " + frame);
        DrawnResponse drawn = new DrawnResponse(response);
        view.render(model, request, drawn);
        String around = drawn.text();
        int place = around.indexOf(PLACE);
        if (place < 0) {
            throw new IllegalStateException("There is no place for the part in " + frame);
        }
        byte[] head = around.substring(0, place).getBytes(StandardCharsets.UTF_8);
        byte[] tail = around.substring(place + PLACE.length()).getBytes(StandardCharsets.UTF_8);
        if (compressing && takesGzip(request)) {
            writeCompressed(head, part, tail, response);
        } else {
            response.setContentLength(head.length + part.bytes().length + tail.length);
            OutputStream out = response.getOutputStream();
            out.write(head);
            out.write(part.bytes());
            out.write(tail);
        }
    }

    /** An answer whose text is kept, and whose headers are those of the answer itself. */
    private static final class DrawnResponse extends HttpServletResponseWrapper {

        private final StringWriter text = new StringWriter();
        private final PrintWriter writer = new PrintWriter(text);

        DrawnResponse(HttpServletResponse response) {
            super(response);
        }

        @Override
        public PrintWriter getWriter() {
            return writer;
        }

        @Override
        public void flushBuffer() {
            // Nothing may be sent yet.
        }

        String text() {
            writer.flush();
            return text.toString();
        }
    }

    /** True for gzip without a weight, as browsers ask for it; how others weigh it is left to the container. */
    private static boolean takesGzip(HttpServletRequest request) {
        String accepted = request.getHeader(HttpHeaders.ACCEPT_ENCODING);
        return accepted != null
                && Arrays.stream(accepted.split(",")).map(String::strip).anyMatch(GZIP::equalsIgnoreCase);
    }

    private static void writeCompressed(byte[] head, Print part, byte[] tail, HttpServletResponse response)
            throws IOException {
        PiecedGzip gzip = new PiecedGzip()
                .add(head, PiecedGzip.deflated(head, Deflater.BEST_SPEED))
                .add(part.bytes(), part.deflated())
                .add(tail, PiecedGzip.deflated(tail, Deflater.BEST_SPEED));
        response.setHeader(HttpHeaders.CONTENT_ENCODING, GZIP);
        response.addHeader(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
        response.setContentLength(gzip.length());
        gzip.writeTo(response.getOutputStream());
    }
}
