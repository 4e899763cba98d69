package studio.stancebook.account.internal;

import java.util.Map;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/** How passwords are hashed: bcrypt, with the name of the method kept in front so that it can be replaced. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({PasswordSettings.class, AdminSettings.class})
class PasswordConfiguration {

    @Bean
    PasswordEncoder passwordEncoder(PasswordSettings settings) {
        return new DelegatingPasswordEncoder(
                "bcrypt", Map.of("bcrypt", new BCryptPasswordEncoder(settings.bcryptStrength())));
    }
}
