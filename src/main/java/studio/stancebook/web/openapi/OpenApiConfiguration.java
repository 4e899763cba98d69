package studio.stancebook.web.openapi;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Title and ways to sign in of the API's description. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    private static final String TOKEN = "token";
    private static final String PASSWORD = "password";

    @Bean
    OpenAPI description(ObjectProvider<BuildProperties> build) {
        BuildProperties properties = build.getIfAvailable();
        return new OpenAPI()
                .info(new Info()
                        .title("Stancebook")
                        .description("Vehicle proportions judged against a studio's own benchmarks. Dimensions are in"
                                + " millimetres and degrees throughout.")
                        .version(properties == null ? "development" : properties.getVersion())
                        .license(new License().name("Apache-2.0").identifier("Apache-2.0")))
                .components(new Components()
                        .addSecuritySchemes(TOKEN, scheme("bearer").description("A token from POST /api/v1/tokens."))
                        .addSecuritySchemes(
                                PASSWORD, scheme("basic").description("For POST /api/v1/tokens, and nowhere else.")))
                .addSecurityItem(new SecurityRequirement().addList(TOKEN));
    }

    private static SecurityScheme scheme(String name) {
        return new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme(name);
    }
}
