package studio.stancebook.catalogue;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.internal.IssueSettling;
import studio.stancebook.catalogue.internal.NamedPackages;
import studio.stancebook.catalogue.internal.PackageReading;
import studio.stancebook.catalogue.internal.PackageSearch;
import studio.stancebook.catalogue.internal.PackageWriting;
import studio.stancebook.catalogue.internal.RaisedIssue;
import studio.stancebook.catalogue.internal.SettingAside;
import studio.stancebook.classes.UnknownSegment;
import studio.stancebook.problem.ExpectedVersion;

/**
 * The benchmark packages of the studio; who may change them is the caller's to check.
 *
 * <p>Whoever changes a package is given it as that change left it: it is read in the transaction of the change, for afterwards
 * it may be somebody else's.
 */
@Component
public class Catalogue {

    private final PackageWriting writing;
    private final PackageReading reading;
    private final PackageSearch search;
    private final MeasuredPackages measured;
    private final SettingAside settingAside;
    private final IssueSettling queries;
    private final NamedPackages named;

    Catalogue(
            PackageWriting writing,
            PackageReading reading,
            PackageSearch search,
            MeasuredPackages measured,
            SettingAside settingAside,
            IssueSettling queries,
            NamedPackages named) {
        this.named = named;
        this.writing = writing;
        this.reading = reading;
        this.search = search;
        this.measured = measured;
        this.settingAside = settingAside;
        this.queries = queries;
    }

    /**
     * Records a package as entered by hand: values out of range and values that do not close are refused.
     *
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming every value that cannot be
     * @throws UnknownSegment if there is no such segment
     * @throws DuplicatePackage if the segment has a package of this name and year
     */
    @Transactional
    public PackageView add(PackageDraft draft, Author by) {
        return reading.get(writing.add(draft, by));
    }

    /**
     * Records packages that are brought in, all or none: values out of range are refused, values that do not close become
     * queries. It is part of what its caller does, who tells it as one {@link studio.stancebook.activity.ActivityEvent}.
     *
     * @return their ids, in the order of the drafts
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming every value of the first package that cannot be
     * @throws UnknownSegment if one names a segment that is not there
     * @throws DuplicatePackage if one has the name and year of another of its segment
     */
    public List<Long> addAll(List<PackageDraft> drafts, Author by) {
        return writing.addAll(drafts, by);
    }

    /**
     * As {@link #addAll}, some packages of many at a time: what has to be seen against the whole class is asked by {@link
     * #screen} once they are all there, in the same transaction.
     */
    public List<Long> addUnscreened(List<PackageDraft> drafts, Author by) {
        return writing.addUnscreened(drafts, by);
    }

    /**
     * Asks about values far from their class and about equal dimensions among packages that were added unscreened.
     *
     * @return what was asked, by package
     */
    public Map<Long, List<Screened>> screen(String segment, List<NewPackage> written) {
        return screened(writing.screen(segment, written));
    }

    private static Map<Long, List<Screened>> screened(Map<Long, List<RaisedIssue>> all) {
        Map<Long, List<Screened>> asked = new HashMap<>();
        all.forEach((id, raised) -> asked.put(
                id,
                raised.stream()
                        .map(one -> new Screened(one.valueKey() == null ? "" : one.valueKey(), one.question()))
                        .toList()));
        return asked;
    }

    /** The packages that have one of the names, each by its own. */
    public Map<PackageName, PackageView> named(Collection<PackageName> names) {
        return named.of(names);
    }

    /** The names of the packages of these ids. */
    public Map<Long, String> names(Collection<Long> ids) {
        return reading.names(List.copyOf(ids));
    }

    /**
     * Changes packages within their segments, as part of a larger transaction that locked these; each change is a line of
     * its own in the activity record. Values that do not close become queries.
     *
     * @throws studio.stancebook.problem.Stale if one was changed since
     */
    public void changeAll(List<PackageUpdate> updates, Author by) {
        writing.changeAll(updates, by);
    }

    /** As {@link #screen}, of packages that were changed; queries that no longer hold go. */
    public Map<Long, List<Screened>> screenChanged(String segment, List<NewPackage> changed) {
        return screened(writing.screenChanged(segment, changed));
    }

    /**
     * What a person is asked about a package that was seen against its class.
     *
     * @param key of the dimension or measure; empty when it is about the package as a whole
     */
    public record Screened(String key, String question) {}

    /**
     * Changes a package. Values that did not close before and are as they were stay a query.
     *
     * @throws UnknownPackage if there is none of this id
     * @throws studio.stancebook.problem.Stale if it was changed since
     * @throws studio.stancebook.dimension.ImpossibleDimensions naming every value that cannot be
     * @throws UnknownSegment if there is no such segment
     * @throws DuplicatePackage if the segment has another package of this name and year
     */
    @Transactional
    public PackageView change(long id, ExpectedVersion expected, PackageDraft draft, Author by) {
        writing.change(id, expected, draft, by);
        return reading.get(id);
    }

    /**
     * Deletes a package.
     *
     * @throws UnknownPackage if there is none of this id
     * @throws studio.stancebook.problem.Stale if it was changed since
     */
    @Transactional
    public void delete(long id, ExpectedVersion expected) {
        writing.delete(id, expected);
    }

    /** @throws UnknownPackage if there is none of this id */
    public PackageView get(long id) {
        return reading.get(id);
    }

    /** The packages of these ids, in the order of the ids; unknown ids are left out. */
    public List<PackageView> getAll(List<Long> ids) {
        return reading.getAll(ids);
    }

    /**
     * A page of packages.
     *
     * @param page sorted by {@code name}, {@code segment}, {@code modelYear}, {@code changedAt} or the key of a measure
     * @throws studio.stancebook.problem.Malformed if it is sorted by anything else
     */
    public Page<PackageSummary> search(CatalogueFilter filter, Pageable page) {
        return measured.concerns(filter, page.getSort()) ? measured.search(filter, page) : search.search(filter, page);
    }

    /** The packages that were recorded or changed after a time, the last first. */
    public List<PackageChange> changedSince(Instant since, int most) {
        return reading.changedSince(since, most);
    }

    /** Reads every package that the filter takes, in ascending order of their ids, without holding more than some. */
    public void forEach(CatalogueFilter filter, Consumer<PackageView> consumer) {
        Consumer<List<Long>> read = ids -> reading.getAll(ids).forEach(consumer);
        if (filter.measure() == null) {
            search.forEach(filter, read);
        } else {
            measured.forEach(filter, read);
        }
    }

    /** Whether a segment has a package of this name and year. */
    public boolean exists(PackageName name) {
        return !reading.taken(List.of(name)).isEmpty();
    }

    /** Those of the names that are taken. */
    public Set<PackageName> taken(Collection<PackageName> names) {
        return reading.taken(names);
    }

    /**
     * Sets aside packages, or values of them, that the transaction under way added, as part of what its caller does and tells.
     *
     * @throws studio.stancebook.problem.Impossible naming a reason or key that cannot be accepted
     */
    public void setAside(List<AsideDraft> drafts, Author by) {
        settingAside.setAside(drafts, by);
    }

    /** Sets aside a package, or values of it, that was there before the transaction under way. */
    public void setAsideAgain(AsideDraft draft, Author by) {
        settingAside.setAsideAgain(draft, by);
    }

    /**
     * Takes a package out of its class, without deleting it, as part of what its caller does and tells.
     *
     * @param reason 1 to 500 characters
     * @throws UnknownPackage if there is none of this id
     */
    @Transactional
    public PackageView setAside(long id, String reason, Author by) {
        settingAside.setAside(id, null, reason, by);
        return reading.get(id);
    }

    /**
     * Takes a package out of its class, without deleting it.
     *
     * @throws studio.stancebook.problem.Stale if it was changed since
     */
    @Transactional
    public PackageView setAside(long id, ExpectedVersion expected, String reason, Author by) {
        settingAside.setAside(id, expected, reason, by);
        return reading.get(id);
    }

    /** Takes a package back into its class. */
    @Transactional
    public PackageView takeBack(long id, ExpectedVersion expected, Author by) {
        settingAside.takeBack(id, expected, by);
        return reading.get(id);
    }

    /**
     * Takes one value of a package out of its class, as part of what its caller does and tells: a measure counts as
     * missing there, a dimension as not recorded.
     *
     * @param key of a measure, or of a dimension, landmark, polyline or tyre that is recorded
     */
    @Transactional
    public PackageView setValueAside(long id, String key, String reason, Author by) {
        settingAside.setValueAside(id, null, key, reason, by);
        return reading.get(id);
    }

    /**
     * Takes one value of a package out of its class.
     *
     * @throws studio.stancebook.problem.Stale if it was changed since
     */
    @Transactional
    public PackageView setValueAside(long id, ExpectedVersion expected, String key, String reason, Author by) {
        settingAside.setValueAside(id, expected, key, reason, by);
        return reading.get(id);
    }

    /** Takes one value of a package back into its class. */
    @Transactional
    public PackageView takeValueBack(long id, ExpectedVersion expected, String key, Author by) {
        settingAside.takeValueBack(id, expected, key, by);
        return reading.get(id);
    }

    /**
     * Answers a query; one that is settled already gets the new answer.
     *
     * @param answer what was found, 1 to 500 characters
     */
    @Transactional
    public PackageView settle(long id, long query, String answer, Author by) {
        queries.settle(id, query, answer, by);
        return reading.get(id);
    }

    /**
     * Answers a query by setting aside the value that it is about, or the package where it is about the whole.
     *
     * @param reason 1 to 500 characters
     * @throws studio.stancebook.problem.Stale if the package was changed since
     */
    @Transactional
    public PackageView setAsideFor(long id, long query, ExpectedVersion expected, String reason, Author by) {
        String key = queries.valueKey(id, query);
        if (key == null) {
            settingAside.setAside(id, expected, reason, by);
        } else {
            settingAside.setValueAside(id, expected, key, reason, by);
        }
        return reading.get(id);
    }

    /** Opens a settled query again. */
    @Transactional
    public PackageView reopen(long id, long query) {
        queries.reopen(id, query);
        return reading.get(id);
    }

    /**
     * What does not count in the class of a segment, by name of the package; a package that is set aside with single
     * values of it set aside as well counts once for each.
     *
     * @param page of packages
     */
    public List<SetAsideView> setAside(String segment, Pageable page) {
        return reading.setAside(segment, page);
    }

    /** The open queries of a segment, newest first. */
    public Page<SegmentIssue> openQueries(SegmentView segment, Pageable page) {
        return queries.open(segment.id(), page);
    }
}
