package studio.stancebook.activity.internal;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.ChainCheck;

/** The chain of hashes. */
@Component
public class Chain {

    private final StoredLines lines;

    public Chain(StoredLines lines) {
        this.lines = lines;
    }

    /** The line with its hash. */
    static ActivityLine sealed(ActivityLine line) {
        return new ActivityLine(
                line.line(),
                line.at(),
                line.byId(),
                line.by(),
                line.action(),
                line.kind(),
                line.subject(),
                line.title(),
                line.changes(),
                line.previousHash(),
                LineHash.of(line));
    }

    /** Looks for the first line that is not as it was written, or not in its place, up to the head of now. */
    public ChainCheck verify() {
        Optional<Long> behind = lines.behindHead();
        ChainHead head = lines.head();
        Walk walk = new Walk();
        lines.forEach(ActivityFilter.all(), head.lineCount(), walk::step);
        return walk.result(head, behind);
    }

    /** One reading of all lines in their order. */
    private static final class Walk {

        private long good;
        private String hash = ActivityLine.NO_HASH;
        private @Nullable String fault;

        void step(ActivityLine line) {
            if (fault == null) {
                fault = faultOf(line);
            }
            if (fault == null) {
                good = line.line();
                hash = line.hash();
            }
        }

        private @Nullable String faultOf(ActivityLine line) {
            if (line.line() != good + 1) {
                return line.line() <= good ? "there is a line before the first." : "it is missing.";
            }
            if (!line.previousHash().equals(hash)) {
                return "it does not follow the line before it; one of the two was changed, moved, put in or taken out.";
            }
            return LineHash.of(line).equals(line.hash()) ? null : "it is not as it was written.";
        }

        ChainCheck result(ChainHead head, Optional<Long> behind) {
            if (fault != null) {
                return ChainCheck.broken(good + 1, hash, fault);
            }
            if (good < head.lineCount()) {
                return ChainCheck.broken(good + 1, hash, "it is missing, with all that came after it.");
            }
            if (!hash.equals(head.hash())) {
                return ChainCheck.broken(good, hash, "it is not the line that was written last.");
            }
            return behind.map(line -> ChainCheck.broken(line, hash, "it was put in behind the last line."))
                    .orElseGet(() -> ChainCheck.good(good, hash));
        }
    }
}
