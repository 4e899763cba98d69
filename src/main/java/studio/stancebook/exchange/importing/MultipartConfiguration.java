package studio.stancebook.exchange.importing;

import jakarta.servlet.MultipartConfigElement;
import org.springframework.boot.servlet.autoconfigure.MultipartProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Has the container put what is being sent where received files are, which is private and swept at every start. */
@Configuration(proxyBeanMethods = false)
class MultipartConfiguration {

    @Bean
    MultipartConfigElement multipartConfig(MultipartProperties limits, ReceivedFiles received) {
        limits.setLocation(received.folder().toString());
        return limits.createMultipartConfig();
    }
}
