package studio.stancebook.web.idempotency;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;
import studio.stancebook.problem.TooLarge;

/** Keeps bodies of API requests to a size that fits in memory; files, which are not read into it, have their own limit. */
final class BodyLimit extends OncePerRequestFilter {

    static final long MAX_BYTES = 4L * 1024 * 1024;

    private final HandlerExceptionResolver rendering;

    BodyLimit(HandlerExceptionResolver rendering) {
        this.rendering = rendering;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (request.getContentLengthLong() > MAX_BYTES) {
            rendering.resolveException(request, response, null, tooLarge());
            return;
        }
        chain.doFilter(new Limited(request), response);
    }

    private static TooLarge tooLarge() {
        return new TooLarge("The body is too large: at most " + MAX_BYTES / (1024 * 1024) + " MB are accepted.");
    }

    /** A request that breaks off when more comes than was announced. */
    private static final class Limited extends HttpServletRequestWrapper {

        Limited(HttpServletRequest request) {
            super(request);
        }

        @Override
        public ServletInputStream getInputStream() throws IOException {
            return new Counted(super.getInputStream());
        }
    }

    private static final class Counted extends ServletInputStream {

        private final ServletInputStream source;
        private long seen;

        Counted(ServletInputStream source) {
            this.source = source;
        }

        @Override
        public int read() throws IOException {
            int value = source.read();
            count(value < 0 ? 0 : 1);
            return value;
        }

        @Override
        public int read(byte[] target, int from, int length) throws IOException {
            int read = source.read(target, from, length);
            count(Math.max(0, read));
            return read;
        }

        private void count(int bytes) {
            seen += bytes;
            if (seen > MAX_BYTES) {
                throw tooLarge();
            }
        }

        @Override
        public boolean isFinished() {
            return source.isFinished();
        }

        @Override
        public boolean isReady() {
            return source.isReady();
        }

        @Override
        public void setReadListener(@Nullable ReadListener listener) {
            source.setReadListener(listener);
        }
    }
}
