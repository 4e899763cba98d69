package studio.stancebook.edge;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;

/** A connection to a server on this machine, from a loopback address of one's choice, on which bytes are sent as they are. */
public final class RawHttp implements AutoCloseable {

    private static final int LONGEST_MILLIS = 10_000;

    private final Socket socket;

    private RawHttp(Socket socket) {
        this.socket = socket;
    }

    public static RawHttp over(Socket socket) throws IOException {
        socket.setSoTimeout(LONGEST_MILLIS);
        return new RawHttp(socket);
    }

    /** @param from such as {@code 127.0.0.9}: on Linux all of 127.0.0.0/8 are this machine's */
    public static RawHttp connect(String from, int port) throws IOException {
        Socket socket = new Socket();
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.connect(new InetSocketAddress("127.0.0.1", port), LONGEST_MILLIS);
        return over(socket);
    }

    /** Sends a request and reads what comes until the server hangs up. */
    public static String exchange(String from, int port, String request) throws IOException {
        try (RawHttp connection = connect(from, port)) {
            return connection.send(request).readToTheEnd();
        }
    }

    public RawHttp send(String text) throws IOException {
        return send(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    public RawHttp send(byte[] bytes) throws IOException {
        socket.getOutputStream().write(bytes);
        return this;
    }

    public String readToTheEnd() throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** Whether the server says nothing and does not hang up for so long. */
    public boolean isQuietFor(int millis) throws IOException {
        socket.setSoTimeout(millis);
        try {
            socket.getInputStream().read();
            return false;
        } catch (SocketTimeoutException quiet) {
            return true;
        } finally {
            socket.setSoTimeout(LONGEST_MILLIS);
        }
    }

    /** The head of an answer, with its blank line, or what there is of it. */
    public String readHead() throws IOException {
        StringBuilder head = new StringBuilder();
        for (int next = 0; next >= 0 && head.indexOf("\r\n\r\n") < 0; ) {
            next = socket.getInputStream().read();
            if (next >= 0) {
                head.append((char) next);
            }
        }
        return head.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
