package io.axiswright.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The house rules of the engine, read from its class files. */
class EngineArchitectureTest {

    /** The order in which data flow; a package may use only those before it. */
    private static final List<String> ORDER = List.of(
            "memory",
            "quantity",
            "graph",
            "numeric",
            "cutting",
            "finding",
            "design",
            "condition",
            "motion",
            "catalogue",
            "standard",
            "duty",
            "topology",
            "controlpower",
            "braking",
            "stopping",
            "supply",
            "conductor",
            "containment",
            "enclosure",
            "energy",
            "harmonic",
            "fault",
            "mounting",
            "wiring",
            "bill",
            "study",
            "comparison");

    /** The entry class of each discipline: only {@code study} may call it. */
    private static final Map<String, String> ENTRIES = Map.ofEntries(
            Map.entry("duty", "DutySizing"),
            Map.entry("topology", "LayoutPlanning"),
            Map.entry("controlpower", "ControlPowerSizing"),
            Map.entry("braking", "BrakingStudy"),
            Map.entry("stopping", "StoppingStudy"),
            Map.entry("supply", "SupplySizing"),
            Map.entry("conductor", "ConductorSizing"),
            Map.entry("containment", "ContainmentCheck"),
            Map.entry("enclosure", "HeatBalance"),
            Map.entry("energy", "EnergyBalance"),
            Map.entry("harmonic", "HarmonicStudy"),
            Map.entry("fault", "FaultStudy"),
            Map.entry("mounting", "MountingCheck"),
            Map.entry("wiring", "WiringChoice"),
            Map.entry("bill", "BillMaking"));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("io.axiswright.engine");

    @TestFactory
    Stream<DynamicTest> packagesUseOnlyThoseAboveThem() {
        return IntStream.range(0, ORDER.size() - 1)
                .mapToObj(k -> DynamicTest.dynamicTest(
                        ORDER.get(k),
                        () -> noClasses()
                                .that()
                                .resideInAPackage(packageOf(ORDER.get(k)))
                                .should()
                                .dependOnClassesThat()
                                .resideInAnyPackage(ORDER.subList(k + 1, ORDER.size()).stream()
                                        .map(EngineArchitectureTest::packageOf)
                                        .toArray(String[]::new))
                                .check(CLASSES)));
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        assertThat(CLASSES.stream()
                        .map(c -> c.getPackageName().replaceFirst("io\\.axiswright\\.engine\\.?", ""))
                        .filter(name -> !name.isEmpty())
                        .distinct())
                .isSubsetOf(ORDER);
    }

    @TestFactory
    Stream<DynamicTest> disciplinesNeverCallEachOther() {
        return ENTRIES.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(
                        entry.getValue(),
                        () -> noClasses()
                                .that()
                                .resideOutsideOfPackages(packageOf(entry.getKey()), packageOf("study"))
                                .should()
                                .dependOnClassesThat()
                                .haveFullyQualifiedName(
                                        "io.axiswright.engine." + entry.getKey() + "." + entry.getValue())
                                .check(CLASSES)));
    }

    @Test
    void knowsNoFrameworkNoClockAndNoChance() {
        ArchRule rule = noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.springframework..",
                        "jakarta..",
                        "tools.jackson..",
                        "java.sql..",
                        "java.net..",
                        "java.time..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.util\\.(Random|SplittableRandom|concurrent\\.ThreadLocalRandom)")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random");
        rule.check(CLASSES);
    }

    @Test
    void keepsNoStateBetweenCalls() {
        assertThat(CLASSES.stream()
                        .flatMap(c -> c.getFields().stream())
                        .filter(f -> f.getModifiers().contains(JavaModifier.STATIC))
                        .filter(f -> !f.getModifiers().contains(JavaModifier.FINAL))
                        .map(JavaField::getFullName))
                .isEmpty();
    }

    private static String packageOf(String name) {
        return "io.axiswright.engine." + name + "..";
    }
}
