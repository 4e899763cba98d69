package studio.stancebook.exchange.importing;

import jakarta.servlet.MultipartConfigElement;
import java.io.IOException;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.servlet.autoconfigure.MultipartProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import studio.stancebook.exchange.table.OwnFolder;

/** Has the container put what is being sent where received files are, which is private and swept at every start. */
@Configuration(proxyBeanMethods = false)
class MultipartConfiguration {

    private static final Logger LOG = LoggerFactory.getLogger(MultipartConfiguration.class);

    @Bean
    MultipartConfigElement multipartConfig(MultipartProperties limits, ReceivedFiles received) {
        Path folder = received.folder();
        try {
            new OwnFolder(folder).make();
        } catch (IOException failure) {
            LOG.warn("{} cannot be made, so no file can be sent: {}", folder, failure.toString());
        }
        limits.setLocation(folder.toString());
        return limits.createMultipartConfig();
    }
}
