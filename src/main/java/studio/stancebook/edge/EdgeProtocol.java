package studio.stancebook.edge;

import java.util.concurrent.TimeUnit;
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
        }

        /** Called whenever bytes have arrived; LONG says that the head, or what runs asynchronously, needs more. */
        @Override
        public SocketState service(SocketWrapperBase<?> connection) throws java.io.IOException {
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
