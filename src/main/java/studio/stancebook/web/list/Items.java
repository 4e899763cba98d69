package studio.stancebook.web.list;

import java.util.List;
import org.springframework.data.domain.Page;

/**
 * A page of a list as the API sends it.
 *
 * @param page counts from 0
 * @param size the most items a page has
 * @param total the number of items on all pages
 */
record Items<T>(List<T> items, int page, int size, long total) {

    static <T> Items<T> of(Page<T> page) {
        return new Items<>(page.getContent(), page.getNumber(), page.getSize(), page.getTotalElements());
    }
}
