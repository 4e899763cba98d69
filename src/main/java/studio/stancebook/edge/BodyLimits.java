package studio.stancebook.edge;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Measures the body of each request while it is read, by whoever reads it, and sees to what is left of it when the answer is
 * ready: somebody admitted is let finish sending, as far and as fast as limits allow, since many clients read no answer
 * before; a stranger is not waited for.
 */
final class BodyLimits extends ValveBase {

    private static final Logger LOG = LoggerFactory.getLogger(BodyLimits.class);

    /** What is taken of the rest of a stranger's body, if it has arrived already: an answer is lost over unread bytes. */
    private static final int ARRIVED = 64 * 1024;

    /** What is taken of the rest of a body that was refused for its length: a file of any size that one would try. */
    private static final long REST = 100L * 1024 * 1024;

    private final LimitSettings limits;
    private final Places strangers;

    BodyLimits(LimitSettings limits, Places strangers) {
        super(true);
        this.limits = limits;
        this.strangers = strangers;
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        if (!Admission.hasBody(request)) {
            getNext().invoke(request, response);
            return;
        }
        InputBuffer source = request.getCoyoteRequest().getInputBuffer();
        MeasuredBody body =
                new MeasuredBody(source, limits, strangers, request.getRemoteAddr(), () -> hasArrived(request));
        body.keepIn(request);
        Sender.keepIn(request);
        request.getCoyoteRequest().setInputBuffer(body);
        try {
            getNext().invoke(request, response);
            if (!isWhollyRead(request)) {
                endUnread(request, response, source, body);
            }
        } finally {
            body.leave();
            request.getCoyoteRequest().setInputBuffer(source);
        }
    }

    private static void endUnread(Request request, Response response, InputBuffer source, MeasuredBody body)
            throws IOException {
        boolean wait = body.isWorthWaitingFor();
        if (!wait && !response.isCommitted()) {
            response.setHeader("Connection", "close");
        }
        response.finishResponse();
        if (wait) {
            drain(request, body, REST, false);
        } else if (request.getHeader("Transfer-Encoding") == null) { // chunks are waited for until they are whole
            drain(request, source, ARRIVED, true);
        }
        if (!isWhollyRead(request)) {
            closeAfterwards(request);
        }
    }

    private static void drain(Request request, InputBuffer from, long most, boolean onlyWhatHasArrived) {
        Taken taken = new Taken();
        try {
            for (long left = most; left > 0 && !(onlyWhatHasArrived && hasArrived(request) == 0); ) {
                int read = from.doRead(taken);
                if (read < 0) {
                    return;
                }
                left -= read;
            }
        } catch (IOException | BodyRefused brokenOff) {
            LOG.debug("The rest of a body was not read", brokenOff);
        }
    }

    private static int hasArrived(Request request) {
        request.getCoyoteRequest().action(ActionCode.AVAILABLE, true);
        return request.getCoyoteRequest().getAvailable();
    }

    private static boolean isWhollyRead(Request request) {
        AtomicBoolean read = new AtomicBoolean();
        request.getCoyoteRequest().action(ActionCode.REQUEST_BODY_FULLY_READ, read);
        return read.get();
    }

    /** The container would otherwise read the rest itself, for as long as it takes. */
    private static void closeAfterwards(Request request) {
        request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
    }

    private static final class Taken implements ApplicationBufferHandler {

        private ByteBuffer buffer = ByteBuffer.allocate(0);

        @Override
        public void setByteBuffer(ByteBuffer buffer) {
            this.buffer = buffer;
        }

        @Override
        public ByteBuffer getByteBuffer() {
            return buffer;
        }

        @Override
        public void expand(int size) {}
    }
}
