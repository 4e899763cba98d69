package studio.stancebook.exchange.web;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.ValueLabels;
import studio.stancebook.exchange.importing.RowChange;
import studio.stancebook.exchange.importing.ValueChange;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.RowProblem;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;

/** What an import changes of packages that are there, in words. */
@Component
class ChangeWords {

    private final MessageSource messages;
    private final StudioMeasures measures;

    ChangeWords(MessageSource messages, StudioMeasures measures) {
        this.messages = messages;
        this.measures = measures;
    }

    /** One changed value; the first of a row has the row and the package beside it. */
    record ChangeLine(long row, long packageId, String title, String what, String before, String after) {}

    List<ChangeLine> lines(List<RowChange> changes) {
        return changes.stream()
                .flatMap(change -> change.values().stream().map(value -> line(change, value)))
                .toList();
    }

    /** Problems that name values rather than columns of the file, by what the values are called. */
    List<RowProblem> named(List<RowProblem> problems) {
        return problems.stream()
                .map(problem -> problem.error() ? problem : problem.at(names(problem.column())))
                .toList();
    }

    private String names(String keys) {
        return String.join(", ", Arrays.stream(keys.split(", ")).map(this::name).toList());
    }

    private ChangeLine line(RowChange change, ValueChange value) {
        return new ChangeLine(
                change.row(), change.packageId(), change.title(), label(value.key()), value.before(), value.after());
    }

    private String label(String key) {
        int dot = key.indexOf('.');
        if (dot >= 0) {
            return messages.getMessage(
                    "exchange.change." + key.substring(0, dot),
                    new Object[] {name(key.substring(dot + 1))},
                    LocaleContextHolder.getLocale());
        }
        return Field.ofKey(key).isPresent()
                ? messages.getMessage("exchange.field." + key, null, LocaleContextHolder.getLocale())
                : name(key) + unit(key);
    }

    private String name(String key) {
        return ValueLabels.of(key)
                .or(() -> measures.current().find(key).map(Measure::name))
                .orElse(key);
    }

    private static String unit(String key) {
        Optional<String> symbol =
                Dimension.ofKey(key).map(dimension -> dimension.unit().symbol());
        return symbol.filter(text -> !text.isEmpty())
                .map(text -> " (" + text + ")")
                .orElse("");
    }
}
