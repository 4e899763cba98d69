package studio.stancebook.account.security;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.annotation.AnnotationTemplateExpressionDefaults;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;

/** Asks the access policy in the language of Spring Security. */
@Configuration(proxyBeanMethods = false)
class Permitted {

    /** Fills the permission into the expression of {@link RequiresPermission}. */
    @Bean
    static AnnotationTemplateExpressionDefaults permissionsInAnnotations() {
        return new AnnotationTemplateExpressionDefaults();
    }

    /** Lets in the people who have a permission. */
    static <T> AuthorizationManager<T> to(Permission permission) {
        return (authentication, what) -> new AuthorizationDecision(may(authentication.get(), permission));
    }

    static boolean may(@Nullable Authentication authentication, Permission permission) {
        return person(authentication).filter(who -> who.may(permission)).isPresent();
    }

    /** The person whom an authentication is of; empty for nobody, and for programs that are nobody of the studio. */
    static Optional<SignedIn> person(@Nullable Authentication authentication) {
        return Optional.ofNullable(authentication)
                .filter(Authentication::isAuthenticated)
                .map(Authentication::getPrincipal)
                .filter(SignedIn.class::isInstance)
                .map(SignedIn.class::cast);
    }
}
