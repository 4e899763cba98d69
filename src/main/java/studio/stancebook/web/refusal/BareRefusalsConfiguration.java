package studio.stancebook.web.refusal;

import org.springframework.boot.tomcat.ConfigurableTomcatWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Puts our words for the container's refusals in front of its own. */
@Configuration(proxyBeanMethods = false)
class BareRefusalsConfiguration {

    /** After the container's own valve, so within it: the one within speaks first; before those that refuse. */
    @Bean
    @Order(Ordered.LOWEST_PRECEDENCE - 1)
    WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory> bareRefusals() {
        return factory -> factory.addContextCustomizers(
                context -> context.getParent().getPipeline().addValve(new BareRefusals()));
    }
}
