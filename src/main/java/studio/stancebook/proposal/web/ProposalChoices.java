package studio.stancebook.proposal.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;

/** What can be picked in the forms of proposals: words by key. */
@Component
class ProposalChoices {

    private final Segments segments;
    private final Proposals proposals;
    private final MessageSource messages;

    ProposalChoices(Segments segments, Proposals proposals, MessageSource messages) {
        this.segments = segments;
        this.proposals = proposals;
        this.messages = messages;
    }

    Map<String, String> segments() {
        Map<String, String> names = new LinkedHashMap<>();
        segments.names().forEach(segment -> names.put(segment.key(), segment.name()));
        return names;
    }

    /** To choose from, with none chosen beforehand; empty where there are no segments. */
    Map<String, String> segmentsToChoose() {
        Map<String, String> known = segments();
        Map<String, String> choices = new LinkedHashMap<>();
        if (!known.isEmpty()) {
            choices.put("", messages.getMessage("web.form.choose", null, LocaleContextHolder.getLocale()));
        }
        choices.putAll(known);
        return choices;
    }

    Map<String, String> allStages() {
        Map<String, String> stages = any();
        for (Stage stage : Stage.values()) {
            stages.put(stage.key(), word(stage));
        }
        return stages;
    }

    Map<String, String> anySegment() {
        Map<String, String> names = any();
        names.putAll(segments());
        return names;
    }

    /** Those whose proposals somebody may see. */
    Map<String, String> anyOwner(SignedIn who) {
        Map<String, String> owners = any();
        proposals.owners(who).forEach(owner -> owners.put(String.valueOf(owner.id()), owner.name()));
        return owners;
    }

    private Map<String, String> any() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", messages.getMessage("proposal.any", null, LocaleContextHolder.getLocale()));
        return choices;
    }

    private String word(Stage stage) {
        return messages.getMessage("proposal.stage." + stage.key(), null, LocaleContextHolder.getLocale());
    }
}
