package studio.stancebook.web.list;

import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.data.domain.Page;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;

/** Sends a page of a list as {@link Items}, with links to its neighbours (RFC 8288). */
@ControllerAdvice
class ItemsAdvice implements ResponseBodyAdvice<Object> {

    @Override
    public boolean supports(MethodParameter returnType, Class<? extends HttpMessageConverter<?>> converter) {
        return true;
    }

    @Override
    public @Nullable Object beforeBodyWrite(
            @Nullable Object body,
            MethodParameter returnType,
            MediaType contentType,
            Class<? extends HttpMessageConverter<?>> converter,
            ServerHttpRequest request,
            ServerHttpResponse response) {
        if (body instanceof Page<?> page) {
            response.getHeaders().set("Link", links(page, request.getURI()));
            return Items.of(page);
        }
        return body;
    }

    private static String links(Page<?> page, URI uri) {
        return new PageLinks(uri, page.getNumber(), page.getSize(), Math.max(1, page.getTotalPages())).header();
    }
}
