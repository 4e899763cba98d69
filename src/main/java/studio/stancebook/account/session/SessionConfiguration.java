package studio.stancebook.account.session;

import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.core.serializer.support.SerializingConverter;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.session.config.annotation.web.http.SpringHttpSessionConfiguration;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.session.web.http.SessionRepositoryFilter;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Sessions in the tables of the studio's own database. */
@Configuration(proxyBeanMethods = false)
@Import(SpringHttpSessionConfiguration.class)
class SessionConfiguration {

    @Bean
    JdbcIndexedSessionRepository storedSessions(
            JdbcOperations jdbc,
            PlatformTransactionManager transactions,
            @Value("${server.servlet.session.timeout}") Duration strangersStay) {
        TransactionTemplate apart = new TransactionTemplate(transactions);
        apart.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        JdbcIndexedSessionRepository sessions = new JdbcIndexedSessionRepository(jdbc, apart);
        sessions.setDefaultMaxInactiveInterval(strangersStay);
        sessions.setSessionIdGenerator(new RandomSessionIds());
        sessions.setConversionService(bytes());
        return sessions;
    }

    @Bean
    @Primary
    ThrottledSessionRepository<?> sessions(JdbcIndexedSessionRepository stored) {
        return ThrottledSessionRepository.over(stored);
    }

    @Bean
    FilterRegistrationBean<RequestBounds> requestBounds(ThrottledSessionRepository<?> sessions) {
        FilterRegistrationBean<RequestBounds> around = new FilterRegistrationBean<>(new RequestBounds(sessions));
        around.setOrder(SessionRepositoryFilter.DEFAULT_ORDER - 1);
        return around;
    }

    private static GenericConversionService bytes() {
        GenericConversionService conversion = new GenericConversionService();
        conversion.addConverter(Object.class, byte[].class, new SerializingConverter());
        conversion.addConverter(byte[].class, Object.class, new ForgivingDeserializer());
        return conversion;
    }
}
