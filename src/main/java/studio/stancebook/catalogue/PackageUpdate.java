package studio.stancebook.catalogue;

/**
 * What a package is to become.
 *
 * @param version that it has now
 */
public record PackageUpdate(long id, long version, PackageDraft draft) {}
