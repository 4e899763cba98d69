package studio.stancebook.web.openapi;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.ArraySchema;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Title, ways to sign in and the shape of problems, in the API's description. */
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
                .servers(List.of(new Server().url("/").description("This server")))
                .components(new Components()
                        .addSecuritySchemes(
                                TOKEN,
                                scheme("bearer")
                                        .description("A token from POST /api/v1/tokens. With the"
                                                + " scope read it is taken by GET and by what only calculates."))
                        .addSecuritySchemes(
                                PASSWORD, scheme("basic").description("For POST /api/v1/tokens, and nowhere else."))
                        .addSchemas(CallDescription.PROBLEM, problem()))
                .addSecurityItem(new SecurityRequirement().addList(TOKEN));
    }

    private static SecurityScheme scheme(String name) {
        return new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme(name);
    }

    private static Schema<?> problem() {
        Schema<?> error = new ObjectSchema()
                .addProperty("field", new StringSchema().example("dimensions.wheelbase"))
                .addProperty("message", new StringSchema());
        Schema<?> problem = new ObjectSchema()
                .addProperty("type", new StringSchema().format("uri-reference").example("/problems/impossible"))
                .addProperty("title", new StringSchema())
                .addProperty("status", new IntegerSchema().example(422))
                .addProperty("detail", new StringSchema())
                .addProperty("errors", new ArraySchema().items(error))
                .addProperty("requestId", new StringSchema().description("names the request in the log"));
        problem.setRequired(List.of("type", "title", "status", "detail"));
        return problem;
    }
}
