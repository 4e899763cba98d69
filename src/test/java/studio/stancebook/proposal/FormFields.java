package studio.stancebook.proposal;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/** What a browser would send of a page's form of dimensions, as it is. */
final class FormFields {

    private FormFields() {}

    static Map<String, String> of(String page) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Element input : Jsoup.parse(page).select("form[data-live-form] [name]")) {
            boolean sent = !input.is("button, [type=checkbox]:not([checked]), [name^=_]");
            if (sent) {
                fields.put(input.attr("name"), value(input));
            }
        }
        return fields;
    }

    private static String value(Element input) {
        return switch (input.tagName()) {
            case "select" -> {
                Element chosen = input.selectFirst("option[selected]");
                yield chosen == null ? "" : chosen.attr("value");
            }
            case "textarea" -> input.wholeText();
            default -> input.attr("value");
        };
    }
}
