package studio.stancebook.web.idempotency;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** A request whose body has been read and can be read again. */
final class RequestWithBody extends HttpServletRequestWrapper {

    private final byte[] body;

    private RequestWithBody(HttpServletRequest request, byte[] body) {
        super(request);
        this.body = body;
    }

    static RequestWithBody read(HttpServletRequest request) throws IOException {
        return new RequestWithBody(request, request.getInputStream().readAllBytes());
    }

    /** SHA-256, in hexadecimal, of method, address with parameters, and body. */
    String hash() {
        MessageDigest digest = sha256();
        digest.update((getMethod() + "\n" + getRequestURI() + "\n" + getQueryString() + "\n")
                .getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest.digest(body));
    }

    @Override
    public ServletInputStream getInputStream() {
        return new BodyStream(body);
    }

    @Override
    public BufferedReader getReader() {
        return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    private static final class BodyStream extends ServletInputStream {

        private final ByteArrayInputStream bytes;

        BodyStream(byte[] body) {
            bytes = new ByteArrayInputStream(body);
        }

        @Override
        public int read() {
            return bytes.read();
        }

        @Override
        public int read(byte[] target, int from, int length) {
            return bytes.read(target, from, length);
        }

        @Override
        public boolean isFinished() {
            return bytes.available() == 0;
        }

        @Override
        public boolean isReady() {
            return true;
        }

        @Override
        public void setReadListener(@Nullable ReadListener listener) {
            throw new UnsupportedOperationException("The body is in memory and read at once");
        }
    }
}
