package studio.stancebook.web.openapi;

import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.springdoc.core.customizers.OperationCustomizer;
import org.springframework.core.MethodParameter;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.method.HandlerMethod;

/** Adds to the description of each call what all calls have in common, so that no controller has to repeat it. */
@Component
class CallDescription implements OperationCustomizer {

    static final String PROBLEM = "Problem";

    private static final String CALLS = "Calls";
    private static final String JSON = "application/json";

    @Override
    public Operation customize(Operation operation, HandlerMethod call) {
        String group = group(call);
        operation.setTags(List.of(group));
        operation.setOperationId(call.getMethod().getName() + group.replace(" ", ""));
        describePaging(operation, call);
        describeIdempotencyKey(operation, call);
        operation
                .getResponses()
                .setDefault(new ApiResponse()
                        .description("A refusal, as in RFC 9457")
                        .content(new Content()
                                .addMediaType(
                                        "application/problem+json",
                                        new MediaType()
                                                .schema(new Schema<>().$ref("#/components/schemas/" + PROBLEM)))));
        return operation;
    }

    /** The words of the controller's name: {@code SegmentStatisticsCalls} becomes "Segment statistics". */
    private static String group(HandlerMethod call) {
        String name = call.getBeanType().getSimpleName();
        String bare = name.endsWith(CALLS) ? name.substring(0, name.length() - CALLS.length()) : name;
        String words = bare.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static void describePaging(Operation operation, HandlerMethod call) {
        Arrays.stream(call.getMethodParameters())
                .filter(parameter -> parameter.getParameterType() == Pageable.class)
                .findFirst()
                .ifPresent(parameter -> describePaging(operation, parameter));
    }

    private static void describePaging(Operation operation, MethodParameter pageable) {
        String name = pageable.getParameterName();
        if (operation.getParameters() != null) {
            operation.getParameters().removeIf(parameter -> parameter.getName().equals(name));
        }
        operation.addParametersItem(
                query("page", number(0, 1_000_000).example(0)).description("counts from 0"));
        operation.addParametersItem(query("size", number(1, 500).example(50)).description("50 if not given"));
    }

    private static Schema<?> number(int min, int max) {
        return new IntegerSchema().minimum(BigDecimal.valueOf(min)).maximum(BigDecimal.valueOf(max));
    }

    private static Parameter query(String name, Object schema) {
        return new Parameter().in("query").name(name).required(false).schema((Schema<?>) schema);
    }

    private static void describeIdempotencyKey(Operation operation, HandlerMethod call) {
        boolean takesJson = operation.getRequestBody() != null
                && operation.getRequestBody().getContent() != null
                && operation.getRequestBody().getContent().containsKey(JSON);
        boolean makesToken = call.getBeanType().getSimpleName().equals("TokenCalls");
        if (call.hasMethodAnnotation(PostMapping.class) && takesJson && !makesToken) {
            operation.addParametersItem(new Parameter()
                    .in("header")
                    .name("Idempotency-Key")
                    .required(false)
                    .description("the same post with the same key is carried out once")
                    .schema(new StringSchema().maxLength(200)));
        }
    }
}
