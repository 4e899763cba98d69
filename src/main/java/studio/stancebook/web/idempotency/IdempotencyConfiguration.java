package studio.stancebook.web.idempotency;

import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Puts the two filters behind those of security, which know who is asking. */
@Configuration(proxyBeanMethods = false)
class IdempotencyConfiguration {

    private static final int LIMIT = Ordered.LOWEST_PRECEDENCE - 20;
    private static final int ONCE = Ordered.LOWEST_PRECEDENCE - 10;

    @Bean
    FilterRegistrationBean<BodyLimit> bodyLimit(
            @Qualifier("handlerExceptionResolver") HandlerExceptionResolver rendering) {
        FilterRegistrationBean<BodyLimit> registration = new FilterRegistrationBean<>(new BodyLimit(rendering));
        registration.addUrlPatterns("/api/*");
        registration.setOrder(LIMIT);
        return registration;
    }

    @Bean
    FilterRegistrationBean<IdempotencyFilter> once(
            StoredResponses answers, @Qualifier("handlerExceptionResolver") HandlerExceptionResolver rendering) {
        FilterRegistrationBean<IdempotencyFilter> registration =
                new FilterRegistrationBean<>(new IdempotencyFilter(answers, rendering));
        registration.addUrlPatterns("/api/*");
        registration.setOrder(ONCE);
        return registration;
    }
}
