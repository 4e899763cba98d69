package studio.stancebook.edge;

import org.apache.catalina.Context;
import org.apache.catalina.Pipeline;
import org.apache.catalina.connector.Connector;
import org.apache.catalina.util.NetMaskSet;
import org.apache.catalina.valves.RemoteIpValve;
import org.apache.tomcat.util.threads.VirtualThreadExecutor;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Puts the limits into the servlet container, around everything that could read a request. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({LimitSettings.class, PublicUrl.class, ProxySettings.class})
class EdgeConfiguration {

    static final String FORWARDED_HOST = "X-Forwarded-Host";

    /** Where a thread that waits costs nothing (JEP 491), it may as well be one for each request. */
    private static final boolean VIRTUAL_THREADS = Runtime.version().feature() >= 24;

    private static final int THREADS = 400;

    /** Requests under way: some fewer than there are threads, so that some are left to refuse and to tell health. */
    private static final int UNDER_WAY = VIRTUAL_THREADS ? 1_000 : THREADS - 40;

    private static final int STRANGERS_BODIES = UNDER_WAY / 3;
    private static final int STRANGERS_BODIES_PER_ADDRESS = 16;

    @Bean
    @Order(Ordered.LOWEST_PRECEDENCE)
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> edge(
            LimitSettings limits, ProxySettings proxies, PublicUrl publicUrl) {
        return factory -> {
            factory.setProtocol(EdgeProtocol.class.getName());
            factory.addConnectorCustomizers(connector -> limit(connector, limits, proxies));
            if (!proxies.trustedProxies().isEmpty()) {
                factory.addEngineValves(forwardedBy(proxies));
            }
            factory.addEngineValves(new BodyLimits(limits, new Places(STRANGERS_BODIES, STRANGERS_BODIES_PER_ADDRESS)));
            factory.addContextCustomizers(context -> addGates(context, limits, publicUrl));
        };
    }

    private static void limit(Connector connector, LimitSettings limits, ProxySettings proxies) {
        EdgeProtocol protocol = (EdgeProtocol) connector.getProtocolHandler();
        int timeout = (int) limits.timeout().toMillis();
        protocol.setConnectionTimeout(timeout);
        protocol.setKeepAliveTimeout(timeout);
        // What is left of a body is for BodyLimits alone.
        protocol.setMaxSwallowSize(0);
        // Whoever asks first whether to send a body is not told to before somebody wants to read it.
        protocol.setContinueResponseTiming("onRead");
        protocol.limitedEndpoint().limit(limits.connectionsPerAddress(), NetMaskSet.parse(proxies.list()));
        if (VIRTUAL_THREADS) {
            protocol.setExecutor(new VirtualThreadExecutor("request-"));
        } else {
            protocol.setMaxThreads(THREADS);
        }
    }

    /** Takes client and scheme from the headers of those who are trusted, the nearest address that is not one's own. */
    private static RemoteIpValve forwardedBy(ProxySettings proxies) {
        RemoteIpValve valve = new RemoteIpValve();
        valve.setInternalProxies(proxies.list());
        valve.setRemoteIpHeader("X-Forwarded-For");
        valve.setProtocolHeader("X-Forwarded-Proto");
        valve.setHostHeader(FORWARDED_HOST);
        valve.setPortHeader("X-Forwarded-Port");
        return valve;
    }

    /** Within the valve that tells refusals in our words. */
    private static void addGates(Context context, LimitSettings limits, PublicUrl publicUrl) {
        Pipeline pipeline = context.getParent().getPipeline();
        pipeline.addValve(new RequestLimits(
                new RequestRates(limits.requestsPerSecond()), new Places(UNDER_WAY, limits.requestsPerAddress())));
        pipeline.addValve(new KnownHost(publicUrl));
        pipeline.addValve(new ReadableQuery());
    }
}
