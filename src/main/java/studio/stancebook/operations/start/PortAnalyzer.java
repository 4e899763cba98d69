package studio.stancebook.operations.start;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Tells that the port is taken. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class PortAnalyzer extends AbstractFailureAnalyzer<PortInUseException> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, PortInUseException cause) {
        return new FailureAnalysis(
                "Port " + cause.getPort() + " is taken by another program.",
                "Stop that program, or set STANCEBOOK_PORT to a free port.",
                cause);
    }
}
