package studio.stancebook.edge;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.IntSupplier;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;

/**
 * The body of a request, which breaks off when it is too long for a stranger, or comes too slowly. Only the time that is
 * spent waiting for it counts.
 */
final class MeasuredBody implements InputBuffer {

    /** The longest body of a stranger: forms with an address and a password, and then some. Our choice. */
    static final int STRANGERS_BYTES = 16 * 1024;

    /** How long a stranger's body is waited for without a place: a form is often sent in two packets. */
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(1);

    private static final long LOOK_AGAIN_NANOS = TimeUnit.MILLISECONDS.toNanos(5);

    private static final String ATTRIBUTE = MeasuredBody.class.getName();

    private final InputBuffer source;
    private final LimitSettings limits;
    private final Places strangers;
    private final String address;
    private final IntSupplier arrived;
    private boolean admitted;
    private boolean hasPlace;
    private boolean brokenOff;
    private long bytes;
    private long nanos;

    /** @param arrived how many bytes can be read without waiting for any */
    MeasuredBody(InputBuffer source, LimitSettings limits, Places strangers, String address, IntSupplier arrived) {
        this.source = source;
        this.limits = limits;
        this.strangers = strangers;
        this.address = address;
        this.arrived = arrived;
    }

    static void admit(HttpServletRequest request) {
        if (request.getAttribute(ATTRIBUTE) instanceof MeasuredBody body) {
            body.admitted = true;
        }
    }

    void keepIn(HttpServletRequest request) {
        request.setAttribute(ATTRIBUTE, this);
    }

    /** Whether the rest may be waited for. */
    boolean isWorthWaitingFor() {
        return admitted && !brokenOff;
    }

    @Override
    public int available() {
        return source.available();
    }

    @Override
    public int doRead(ApplicationBufferHandler handler) throws IOException {
        long start = System.nanoTime();
        if (!admitted) {
            takePlace();
        }
        int read = source.doRead(handler);
        nanos += System.nanoTime() - start;
        bytes += Math.max(0, read);
        check();
        return read;
    }

    private void check() {
        if (!admitted && bytes > STRANGERS_BYTES) {
            throw refusal(413, "Before signing in, at most " + STRANGERS_BYTES + " bytes are accepted.");
        }
        if (nanos > TimeUnit.MILLISECONDS.toNanos(millisAllowed())) {
            throw refusal(408, "What you sent came too slowly to wait for the rest of it.");
        }
    }

    private long millisAllowed() {
        long always = limits.timeout().toMillis();
        return admitted ? always + bytes * 1000 / limits.bodyRate().toBytes() : always;
    }

    /** A stranger who is waited for takes a place; whoever sent all of a form at once, or nearly so, needs none. */
    private void takePlace() {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (!hasPlace && arrived.getAsInt() == 0) {
            hasPlace = strangers.take(address) == Places.Answer.TAKEN;
            if (!hasPlace && System.nanoTime() > end) {
                throw refusal(503, "Too many others are signing in at this moment.");
            }
            if (!hasPlace) {
                LockSupport.parkNanos(LOOK_AGAIN_NANOS);
            }
        }
    }

    private BodyRefused refusal(int status, String detail) {
        brokenOff = true;
        return new BodyRefused(status, detail);
    }

    /** To be called once the request is over. */
    void leave() {
        if (hasPlace) {
            strangers.give(address);
            hasPlace = false;
        }
    }
}
