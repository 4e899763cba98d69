package studio.stancebook.catalogue;

import studio.stancebook.StudioTest;

@StudioTest
class PackageCallsOnH2Test extends PackageCallsTest {}
