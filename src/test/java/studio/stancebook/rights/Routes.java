package studio.stancebook.rights;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.context.ApplicationContext;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.handler.AbstractUrlHandlerMapping;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

/** Everything that is mapped: methods of controllers, management endpoints, files; and what filters answer. */
public final class Routes {

    private static final Pattern LIBRARY_VERSION = Pattern.compile("/[0-9]+\\.[0-9]+\\.[0-9]+/");

    /** Answered by filters, so mapped nowhere, or open within something mapped that is not. */
    private static Stream<Route> unmapped() {
        return Stream.of(
                new Route("POST", "/sign-out", Optional.empty()),
                new Route("GET", "/actuator/health/liveness", Optional.empty()),
                new Route("GET", "/actuator/health/readiness", Optional.empty()));
    }

    private Routes() {}

    public static SortedSet<Route> of(ApplicationContext studio) {
        SortedSet<Route> routes = new TreeSet<>();
        unmapped().forEach(routes::add);
        studio.getBeansOfType(RequestMappingInfoHandlerMapping.class)
                .values()
                .forEach(mapping -> mapping.getHandlerMethods().forEach((info, method) -> add(info, method, routes)));
        studio.getBeansOfType(AbstractUrlHandlerMapping.class)
                .values()
                .forEach(mapping -> mapping.getHandlerMap()
                        .keySet()
                        .forEach(path -> routes.add(new Route("GET", withoutVersion(path), Optional.empty()))));
        return routes;
    }

    private static void add(RequestMappingInfo info, HandlerMethod method, SortedSet<Route> routes) {
        for (String path : info.getPatternValues()) {
            if (info.getMethodsCondition().getMethods().isEmpty()) {
                routes.add(new Route("ANY", path, Optional.of(method)));
            }
            info.getMethodsCondition()
                    .getMethods()
                    .forEach(verb -> routes.add(new Route(verb.name(), path, Optional.of(method))));
        }
    }

    private static String withoutVersion(String path) {
        return LIBRARY_VERSION.matcher(path).replaceAll("/{version}/");
    }
}
