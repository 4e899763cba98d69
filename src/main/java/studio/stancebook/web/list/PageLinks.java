package studio.stancebook.web.list;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * Links from one page of a list to the others, relative to this server.
 *
 * @param uri the request, whose other parameters the links keep
 * @param page counts from 0; may lie beyond the last page
 * @param pages at least 1
 */
record PageLinks(URI uri, int page, int size, int pages) {

    /** The value of a Link header with first, prev, next and last, as far as there are such pages. */
    String header() {
        int last = pages - 1;
        List<String> links = new ArrayList<>();
        links.add(link("first", 0));
        if (page > 0) {
            links.add(link("prev", Math.min(page - 1, last)));
        }
        if (page < last) {
            links.add(link("next", page + 1));
        }
        links.add(link("last", last));
        return String.join(", ", links);
    }

    private String link(String relation, int number) {
        String target = UriComponentsBuilder.fromPath(uri.getRawPath())
                .query(uri.getRawQuery())
                .replaceQueryParam("page", number)
                .replaceQueryParam("size", size)
                .build()
                .toUriString();
        return "<" + target + ">; rel=\"" + relation + "\"";
    }
}
