package studio.stancebook.operations.room;

import java.nio.file.Path;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.web.servlet.HandlerExceptionResolver;
import studio.stancebook.operations.start.DatabaseUrl;

/** Room is watched where the database is a file; a database server watches its own. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(RoomSettings.class)
class RoomConfiguration {

    /** Behind security, which says first who may write at all, and before anything that records. */
    private static final int GUARD = Ordered.LOWEST_PRECEDENCE - 30;

    @Bean
    FreeBytes freeBytes() {
        return folder -> folder.toFile().getUsableSpace();
    }

    @Bean
    Room room(@Value("${spring.datasource.url}") String url, FreeBytes freeBytes, RoomSettings settings) {
        return new Room(folder(url), freeBytes, settings);
    }

    @Bean
    FilterRegistrationBean<RoomGuard> roomGuard(
            Room room, @Qualifier("handlerExceptionResolver") HandlerExceptionResolver rendering) {
        FilterRegistrationBean<RoomGuard> registration = new FilterRegistrationBean<>(new RoomGuard(room, rendering));
        registration.setOrder(GUARD);
        return registration;
    }

    private static Optional<Path> folder(String url) {
        return DatabaseUrl.file(url).map(Path::getParent);
    }
}
