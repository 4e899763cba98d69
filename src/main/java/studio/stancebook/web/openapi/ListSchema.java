package studio.stancebook.web.openapi;

import com.fasterxml.jackson.databind.JavaType;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.oas.models.media.ArraySchema;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.stereotype.Component;

/** Describes a page of a list as it is sent: items, page, size and total. */
@Component
class ListSchema implements ModelConverter {

    @Override
    public @Nullable Schema<?> resolve(
            AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> others) {
        JavaType java = Json.mapper().constructType(type.getType());
        if (java != null && Page.class.isAssignableFrom(java.getRawClass())) {
            AnnotatedType item = new AnnotatedType(java.containedTypeOrUnknown(0)).resolveAsRef(true);
            return list(context.resolve(item));
        }
        return others.hasNext() ? others.next().resolve(type, context, others) : null;
    }

    private static Schema<?> list(Schema<?> item) {
        Schema<?> list = new ObjectSchema()
                .addProperty("items", new ArraySchema().items(item))
                .addProperty("page", new IntegerSchema().description("counts from 0"))
                .addProperty("size", new IntegerSchema().description("the most items that a page has"))
                .addProperty("total", new IntegerSchema().format("int64").description("items on all pages"));
        list.setRequired(List.of("items", "page", "size", "total"));
        return list;
    }
}
