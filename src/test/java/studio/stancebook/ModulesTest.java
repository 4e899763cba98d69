package studio.stancebook;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Profile;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.modulith.core.Violations;
import org.springframework.security.access.prepost.PreAuthorize;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.Role;
import studio.stancebook.forbidden.ForbiddenApplication;

class ModulesTest {

    private static final Set<String> EXPECTED = Set.of(
            "quantity",
            "problem",
            "tyre",
            "geometry",
            "limit",
            "statistics",
            "dimension",
            "measure",
            "moves",
            "classes",
            "catalogue",
            "band",
            "proposal",
            "compare",
            "activity",
            "paper",
            "drawing",
            "exchange",
            "edge",
            "access",
            "account",
            "demo",
            "underlay",
            "operations",
            "web");

    private static final ApplicationModules MODULES = ApplicationModules.of(Stancebook.class);

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("studio.stancebook");

    /** What a pure package may import; numeric libraries are named one by one. */
    private static ArchRule pure(String... packages) {
        return ArchRuleDefinition.classes()
                .that()
                .resideInAnyPackage(packages)
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java..",
                        "org.jspecify..",
                        "org.springframework.modulith",
                        "org.locationtech.jts..",
                        "org.apache.commons.statistics..",
                        "org.apache.commons.numbers..",
                        "org.hipparchus..",
                        "studio.stancebook.quantity",
                        "studio.stancebook.problem",
                        "studio.stancebook.tyre",
                        "studio.stancebook.geometry",
                        "studio.stancebook.statistics",
                        "studio.stancebook.dimension",
                        "studio.stancebook.dimension.reshaping",
                        "studio.stancebook.measure",
                        "studio.stancebook.moves");
    }

    /** Each package; what is internal to a module belongs to the module's own package, which is its door. */
    private static final SliceAssignment PACKAGES = new SliceAssignment() {

        @Override
        public SliceIdentifier getIdentifierOf(JavaClass one) {
            return SliceIdentifier.of(one.getPackageName().replaceFirst("\\.internal$", ""));
        }

        @Override
        public String getDescription() {
            return "packages";
        }
    };

    /** Beans are chosen when the jar is built, and the demo studio is kept from that: decision 0067. */
    @Test
    void chooseNoBeansByWhatIsKnownAtTheStart() {
        ArchRuleDefinition.noMethods()
                .should()
                .beMetaAnnotatedWith(Conditional.class)
                .check(CLASSES);
        ArchRuleDefinition.noClasses()
                .that()
                .areNotAnnotatedWith(Profile.class)
                .should()
                .beMetaAnnotatedWith(Conditional.class)
                .check(CLASSES);
        Set<String> profiles = CLASSES.stream()
                .filter(one -> one.isAnnotatedWith(Profile.class))
                .flatMap(one -> Stream.of(one.getAnnotationOfType(Profile.class).value()))
                .collect(Collectors.toSet());
        assertEquals(Set.of("demo", "!demo"), profiles);
    }

    @Test
    void areTheOnesThatTheArchitectureNames() {
        Set<String> found = MODULES.stream()
                .map(module -> module.getIdentifier().toString())
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(new TreeSet<>(EXPECTED), found);
    }

    @Test
    void dependOnEachOtherOnlyAsDeclared() {
        assertDoesNotThrow(() -> MODULES.verify());
    }

    /** Two modules under {@code studio.stancebook.forbidden} in the tests: one imports the other without declaring it. */
    @Test
    void reportAForbiddenImport() {
        Violations violations = ApplicationModules.of(ForbiddenApplication.class, new ImportOption.OnlyIncludeTests())
                .detectViolations();

        assertEquals(
                List.of(true),
                violations.getMessages().stream()
                        .map(message -> message.contains("'pupil' depends on module 'master'"))
                        .distinct()
                        .toList());
    }

    /** Who may do what stands in the access policy alone: decision 0095. */
    @Test
    void leaveRolesToTheAccessPolicy() {
        ArchRuleDefinition.noClasses()
                .that()
                .resideOutsideOfPackages(
                        "studio.stancebook.access", "studio.stancebook.account..", "studio.stancebook.demo")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Role.class)
                .check(CLASSES);
        ArchRuleDefinition.noMethods()
                .should()
                .beAnnotatedWith(PreAuthorize.class)
                .check(CLASSES);
        ArchRuleDefinition.noClasses()
                .that()
                .areNotAssignableTo(RequiresPermission.class)
                .should()
                .beAnnotatedWith(PreAuthorize.class)
                .check(CLASSES);
    }

    @Test
    void keepTheCoreFreeOfFrameworks() {
        pure(
                        "studio.stancebook.quantity",
                        "studio.stancebook.problem",
                        "studio.stancebook.tyre",
                        "studio.stancebook.geometry",
                        "studio.stancebook.statistics",
                        "studio.stancebook.dimension",
                        "studio.stancebook.dimension.reshaping",
                        "studio.stancebook.moves")
                .check(CLASSES);
    }

    @Test
    void noticeAFrameworkInAPackageThatClaimsToBePure() {
        JavaClasses own = new ClassFileImporter().importPackages("studio.stancebook.forbidden");

        assertFalse(pure("studio.stancebook.forbidden")
                .evaluate(own)
                .getFailureReport()
                .isEmpty());
    }

    @Test
    void haveNoCycles() {
        slices().matching("studio.stancebook.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void haveNoCyclesBetweenTheirPackages() {
        slices().assignedFrom(PACKAGES).should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void noticeACycleBetweenPackagesOfOneModule() {
        JavaClasses planted = new ClassFileImporter().importPackages("studio.stancebook.forbidden.circle");

        String report = slices().assignedFrom(PACKAGES)
                .should()
                .beFreeOfCycles()
                .evaluate(planted)
                .getFailureReport()
                .toString();
        assertTrue(report.contains("circle.there") && report.contains("circle.back"), report);
    }
}
