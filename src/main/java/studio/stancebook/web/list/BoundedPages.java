package studio.stancebook.web.list;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.MethodParameter;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
import org.springframework.data.web.PageableHandlerMethodArgumentResolver;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.util.UriUtils;
import studio.stancebook.problem.Malformed;

/** Reads {@code page}, {@code size} and {@code sort}, refusing what is out of range instead of bending it silently. */
@Configuration(proxyBeanMethods = false)
@Order(Ordered.HIGHEST_PRECEDENCE)
class BoundedPages implements WebMvcConfigurer {

    static final int DEFAULT_SIZE = 50;
    static final int MAX_SIZE = 500;
    static final int MAX_PAGE = 1_000_000;

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new Resolver());
    }

    /** Spring Data's reading of the parameters, after ours has found them acceptable. */
    private static final class Resolver extends PageableHandlerMethodArgumentResolver {

        Resolver() {
            setFallbackPageable(PageRequest.of(0, DEFAULT_SIZE));
            setMaxPageSize(MAX_SIZE);
        }

        @Override
        public Pageable resolveArgument(
                MethodParameter parameter,
                @Nullable ModelAndViewContainer model,
                NativeWebRequest request,
                @Nullable WebDataBinderFactory binders) {
            check("page", request.getParameter("page"), 0, MAX_PAGE);
            check("size", request.getParameter("size"), 1, MAX_SIZE);
            checkSort(request.getParameterValues("sort"));
            return super.resolveArgument(parameter, model, request, binders);
        }

        private static void check(String name, @Nullable String value, int min, int max) {
            if (value != null && !isWithin(value, min, max)) {
                String shown = value.length() > 20 ? value.substring(0, 20) + "…" : value;
                throw Malformed.ofField(
                        name, name + " is a whole number from " + min + " to " + max + ", not \"" + shown + "\".");
            }
        }

        /** Spring Data decodes the order a second time, and takes what it cannot decode for a fault of ours. */
        private static void checkSort(String @Nullable [] orders) {
            for (String order : orders == null ? new String[0] : orders) {
                try {
                    UriUtils.decode(order, StandardCharsets.UTF_8);
                } catch (IllegalArgumentException e) {
                    String shown = order.length() > 20 ? order.substring(0, 20) + "…" : order;
                    throw Malformed.ofField(
                            "sort", "sort names a column, and asc or desc after a comma, not \"" + shown + "\".");
                }
            }
        }

        private static boolean isWithin(String value, int min, int max) {
            return value.matches("[0-9]{1,7}") && Integer.parseInt(value) >= min && Integer.parseInt(value) <= max;
        }
    }
}
