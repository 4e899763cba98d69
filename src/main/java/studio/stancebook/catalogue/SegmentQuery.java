package studio.stancebook.catalogue;

/** A query beside the package it is about. */
public record SegmentQuery(long packageId, String packageName, PackageQuery query) {}
