package studio.stancebook.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.data.domain.Sort;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.quantity.ShownUnits;

/**
 * What the frame of a page and the fragments ask for while they are drawn, as {@code shell}.
 *
 * <p>A bean rather than model attributes, because pages about refusals are drawn without any controller.
 */
@Component
class Shell {

    private static final DateTimeFormatter ISSUE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    /** As a browser's field for a day takes it. */
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])");

    private final ShellSettings settings;
    private final HttpServletRequest request;
    private final MessageSource messages;
    private final Clock clock;

    Shell(ShellSettings settings, HttpServletRequest request, MessageSource messages, Clock clock) {
        this.settings = settings;
        this.request = request;
        this.messages = messages;
        this.clock = clock;
    }

    /** The studio's name. */
    public String studio() {
        return settings.studioName();
    }

    /** The signed-in person; null if nobody is signed in. */
    public @Nullable SignedIn person() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedIn who ? who : null;
    }

    /** Whether the signed-in person has a permission, whoever owns the thing. */
    public boolean may(Permission permission) {
        SignedIn who = person();
        return who != null && who.may(permission);
    }

    /** The date of today, as on the title block of a sheet. */
    public String issue() {
        return ISSUE.format(LocalDate.now(clock));
    }

    /** The theme to force, {@code light} or {@code dark}; null to leave it to the reader's system. */
    public @Nullable String theme() {
        Theme chosen = ThemeChoice.of(request);
        return chosen == Theme.SYSTEM ? null : chosen.key();
    }

    /** The word of the theme that was chosen; {@code system} if none was. */
    public String themeChoice() {
        return ThemeChoice.of(request).key();
    }

    /** The symbol of the unit in which lengths are written on this page. */
    public String lengthUnit() {
        return ShownUnits.symbol();
    }

    /** What leaning angles are read from on this page: {@code horizontal} or {@code vertical}. */
    public String anglesFrom() {
        return ShownUnits.current().angles().key();
    }

    /** Path and query of this page within the server, to come back to; the board for what cannot be asked for again. */
    public String address() {
        if (!"GET".equals(request.getMethod())
                || request.getDispatcherType() != jakarta.servlet.DispatcherType.REQUEST) {
            return request.getContextPath() + "/";
        }
        String query = request.getQueryString();
        return request.getRequestURI() + (query == null ? "" : "?" + query);
    }

    /** The address of this page with one parameter changed. */
    public String with(String parameter, Object value) {
        return changed().replaceQueryParam(parameter, value).build().toUriString();
    }

    /** The address of this page sorted by a property: ascending first, descending if it is ascending already. */
    public String sortedBy(@Nullable Sort sort, String property) {
        String direction = "ascending".equals(sorted(sort, property)) ? "desc" : "asc";
        return changed()
                .replaceQueryParam("sort", property + "," + direction)
                .replaceQueryParam("page")
                .build()
                .toUriString();
    }

    private UriComponentsBuilder changed() {
        String query = request.getQueryString();
        return UriComponentsBuilder.fromPath(request.getRequestURI()).query(query);
    }

    /** How a list is sorted by a property, in the words of {@code aria-sort}; null if it is not. */
    public @Nullable String sorted(@Nullable Sort sort, String property) {
        Sort.Order order = sort == null ? null : sort.getOrderFor(property);
        if (order == null) {
            return null;
        }
        return order.isAscending() ? "ascending" : "descending";
    }

    /** The ids of what describes a field: its hint and its error, as far as there are any; null for neither. */
    public @Nullable String described(String name, @Nullable Object hint, @Nullable Object error) {
        return described(name, null, hint, error);
    }

    /** The ids of what describes a field with a unit. */
    public @Nullable String described(
            String name, @Nullable Object unit, @Nullable Object hint, @Nullable Object error) {
        String ids = String.join(
                " ",
                Arrays.asList(
                        unit == null ? "" : "f-" + name + "-unit",
                        hint == null ? "" : "f-" + name + "-hint",
                        error == null ? "" : "f-" + name + "-error"));
        return ids.isBlank() ? null : ids.strip().replaceAll(" +", " ");
    }

    /** The type of a field for a day: plain text where what was typed is no day, which a field for days would not show. */
    public String dayType(@Nullable Object typed) {
        String text = Objects.toString(typed, "").strip();
        return text.isEmpty() || DAY.matcher(text).matches() ? "date" : "text";
    }

    /** The words of a message with what goes into its places. */
    public String words(String key, Object @Nullable [] places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}
