package io.axiswright.engine.conductor.checker;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.conductor.CircuitKind;
import io.axiswright.engine.conductor.Limit;
import io.axiswright.engine.conductor.LoadKind;
import io.axiswright.engine.conductor.ResistorPulse;
import io.axiswright.engine.conductor.Trial;
import io.axiswright.engine.standard.CircuitUse;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.Raceway;
import org.junit.jupiter.api.Test;

/** A checker that shared code with what it checks would share its errors. */
class CheckerIndependenceTest {

    @Test
    void knowsRequestsAndAnswersButNothingThatSelectsOrLooksUp() {
        classes()
                .that()
                .resideInAPackage("io.axiswright.engine.conductor.checker")
                .and()
                .doNotHaveSimpleName(CheckerIndependenceTest.class.getSimpleName())
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                                "java..",
                                "org.jspecify..",
                                "de.siegmar..",
                                "io.axiswright.engine.quantity..",
                                "io.axiswright.engine.design..",
                                "io.axiswright.engine.conductor.checker..")
                        .or(oneOf(
                                Circuit.class,
                                CircuitConductors.class,
                                CircuitKind.class,
                                Limit.class,
                                LoadKind.class,
                                ResistorPulse.class,
                                TerminalRange.class,
                                Trial.class,
                                CircuitUse.class,
                                ConductorClass.class,
                                Raceway.class)))
                .check(new ClassFileImporter().importPackages("io.axiswright.engine.conductor.checker"));
    }

    private static DescribedPredicate<JavaClass> oneOf(Class<?>... words) {
        return JavaClass.Predicates.belongToAnyOf(words);
    }
}
