package studio.stancebook.edge;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.apache.coyote.Adapter;
import org.apache.coyote.Processor;
import org.apache.coyote.http11.AbstractHttp11Protocol;
import org.apache.coyote.http11.Http11NioProtocol;
import org.apache.coyote.http11.Http11Processor;
import org.apache.tomcat.util.net.AbstractEndpoint.Handler.SocketState;
import org.apache.tomcat.util.net.SocketWrapperBase;

/**
 * HTTP/1.1 as the container speaks it, with a limit of connections for each address and a time within which a head must be
 * whole. The container's own timeouts begin anew with each byte.
 */
public final class EdgeProtocol extends Http11NioProtocol {

    /** The container's note on a request that tells whether the client has closed its connection. */
    static final int CLOSED_BY_CLIENT = 31;

    private final LimitedEndpoint endpoint;

    /** Made by the container, by name. */
    public EdgeProtocol() {
        this(new LimitedEndpoint());
    }

    private EdgeProtocol(LimitedEndpoint endpoint) {
        super(endpoint);
        this.endpoint = endpoint;
    }

    LimitedEndpoint limitedEndpoint() {
        return endpoint;
    }

    @Override
    protected Processor createProcessor() {
        return new TimedProcessor(this, getAdapter());
    }

    private static final class TimedProcessor extends Http11Processor {

        private final AbstractHttp11Protocol<?> protocol;
        private long headBegan;

        TimedProcessor(AbstractHttp11Protocol<?> protocol, Adapter adapter) {
            super(protocol, adapter);
            this.protocol = protocol;
            getRequest().setNote(CLOSED_BY_CLIENT, (BooleanSupplier) this::isClosedByClient);
        }

        /** Looks for a byte without waiting for one, and puts back what it finds. */
        private boolean isClosedByClient() {
            ByteBuffer found = ByteBuffer.allocate(1);
            try {
                int bytes = getSocketWrapper().read(false, found);
                if (bytes > 0) {
                    getSocketWrapper().unRead(found.flip());
                }
                return bytes < 0;
            } catch (IOException reset) {
                return true;
            }
        }

        /** Called whenever bytes have arrived; LONG says that the head, or what runs asynchronously, needs more. */
        @Override
        public SocketState service(SocketWrapperBase<?> connection) throws IOException {
            SocketState state = super.service(connection);
            if (state != SocketState.LONG || isAsync()) {
                headBegan = 0;
                return state;
            }
            long now = System.nanoTime();
            if (headBegan == 0) {
                headBegan = now;
            }
            boolean late = now - headBegan > TimeUnit.MILLISECONDS.toNanos(protocol.getConnectionTimeout());
            return late ? SocketState.CLOSED : state;
        }
    }
}
