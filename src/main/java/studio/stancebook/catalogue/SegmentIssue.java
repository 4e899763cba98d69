package studio.stancebook.catalogue;

/** A query beside the package it is about. */
public record SegmentIssue(long packageId, String packageName, PackageIssue query) {}
