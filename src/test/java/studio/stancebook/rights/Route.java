package studio.stancebook.rights;

import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.bind.annotation.ValueConstants;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.multipart.MultipartFile;

/**
 * Something that the server answers.
 *
 * @param method of HTTP; ANY if it takes every one
 * @param path the pattern, such as {@code /proposals/{id}}
 * @param handler the method that answers; empty for files and for what a filter answers
 */
public record Route(String method, String path, Optional<HandlerMethod> handler) implements Comparable<Route> {

    private static final Pattern VARIABLE = Pattern.compile("\\{\\*?([^}]+)}");

    public String name() {
        return method + " " + path;
    }

    /** What to send where any method is taken. */
    String sentMethod() {
        return method.equals("ANY") ? "GET" : method;
    }

    boolean isApi() {
        return path.startsWith("/api/");
    }

    /** Whether anybody can be hurt by a page elsewhere that makes a browser ask for this. */
    boolean isForm() {
        return !isApi() && !reads();
    }

    boolean reads() {
        return sentMethod().equals("GET");
    }

    /** Whether a template answers, as a page, a part of one or a drawing: a method of a controller that names a view. */
    public boolean isPage() {
        return reads()
                && handler.filter(found -> found.getMethod().getReturnType() == String.class)
                        .filter(found -> !found.hasMethodAnnotation(ResponseBody.class))
                        .filter(found -> !AnnotatedElementUtils.hasAnnotation(found.getBeanType(), ResponseBody.class))
                        .isPresent();
    }

    /** The path with ids of nothing there is. */
    String pathToNothing() {
        return VARIABLE.matcher(path)
                .replaceAll(variable -> isNumber(variable) ? "999999999" : "no-such-thing")
                .replace("/**", "/no-such-thing");
    }

    private boolean isNumber(MatchResult variable) {
        return parameters().stream()
                .filter(parameter -> parameter.isAnnotationPresent(PathVariable.class))
                .filter(parameter -> parameter.getName().equals(variable.group(1)))
                .anyMatch(parameter -> parameter.getType() != String.class);
    }

    boolean takesFile() {
        return parameters().stream().anyMatch(parameter -> parameter.getType() == MultipartFile.class);
    }

    /** A body in JSON that can be read as what the call takes, with nothing in it. */
    String emptyJson() {
        boolean list = parameters().stream()
                .filter(parameter -> parameter.isAnnotationPresent(RequestBody.class))
                .anyMatch(parameter -> parameter.getType() == List.class);
        return list ? "[]" : "{}";
    }

    /** The parameters that must be there, each 0. */
    List<String> neededParameters() {
        return parameters().stream()
                .filter(parameter -> parameter.getType() != MultipartFile.class)
                .filter(Route::isNeeded)
                .map(Route::nameOf)
                .toList();
    }

    private static boolean isNeeded(Parameter parameter) {
        RequestParam asked = parameter.getAnnotation(RequestParam.class);
        return asked != null
                && asked.required()
                && asked.defaultValue().equals(ValueConstants.DEFAULT_NONE)
                && parameter.getType() != Optional.class;
    }

    private static String nameOf(Parameter parameter) {
        String given = parameter.getAnnotation(RequestParam.class).name()
                + parameter.getAnnotation(RequestParam.class).value();
        return given.isEmpty() ? parameter.getName() : given;
    }

    private List<Parameter> parameters() {
        return handler.map(found -> Arrays.asList(found.getMethod().getParameters()))
                .orElse(List.of());
    }

    @Override
    public int compareTo(Route other) {
        return (path + " " + method).compareTo(other.path + " " + other.method);
    }
}
