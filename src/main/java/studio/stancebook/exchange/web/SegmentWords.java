package studio.stancebook.exchange.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.util.MultiValueMap;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.exchange.importing.ImportJob;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.Upload;

/** The words by which a file names segments that are not there, and which segment each stands for. */
@Component
class SegmentWords {

    private final Segments segments;
    private final MessageSource messages;

    SegmentWords(Segments segments, MessageSource messages) {
        this.segments = segments;
        this.messages = messages;
    }

    /** What a form says of them: the key of a segment by each of the words that stand for one. */
    static Map<String, String> pointed(MultiValueMap<String, String> form) {
        List<String> words = form.getOrDefault("word", List.of());
        List<String> keys = form.getOrDefault("pointed", List.of());
        Map<String, String> pointed = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(words.size(), keys.size()) && pointed.size() < ImportCalls.MOST_POINTED; i++) {
            if (!keys.get(i).isEmpty()) {
                pointed.put(words.get(i), keys.get(i));
            }
        }
        return pointed;
    }

    /** The words that the last check did not find, and those that were told before, each with the key it stands for. */
    Map<String, String> of(Upload upload) {
        Map<String, String> all = new LinkedHashMap<>();
        ImportOptions options = upload.options();
        if (options != null) {
            all.putAll(options.segments());
        }
        ImportReport report = report(upload.job());
        if (report != null) {
            report.missingSegments().forEach(words -> all.putIfAbsent(words, ""));
        }
        return all;
    }

    private static @Nullable ImportReport report(@Nullable ImportJob job) {
        return job == null ? null : job.status().report();
    }

    /** Names of the segments there are, by key; the empty key first. */
    Map<String, String> choices() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", messages.getMessage("exchange.segment.none", null, LocaleContextHolder.getLocale()));
        segments.all().forEach(segment -> choices.put(segment.key(), segment.name()));
        return choices;
    }
}
