package io.axiswright.engine.supply.checker;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.supply.TransformerNeed;
import io.axiswright.engine.supply.TransformerRating;
import org.junit.jupiter.api.Test;

/** A checker that shared code with what it checks would share its errors. */
class PanelCheckerIndependenceTest {

    @Test
    void knowsRequestsAndAnswersButNothingThatSelectsOrLooksUp() {
        classes()
                .that()
                .haveSimpleName("PanelChecker")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                                "java..",
                                "org.assertj..",
                                "org.jspecify..",
                                "io.axiswright.engine.quantity..",
                                "io.axiswright.engine.design..",
                                "io.axiswright.engine.supply.checker..")
                        .or(belongToAnyOf(
                                SupplyRequest.class,
                                SupplyResult.class,
                                SupplyLoad.class,
                                LoadUse.class,
                                BranchCircuit.class,
                                Feeder.class,
                                TransformerNeed.class,
                                TransformerRating.class)))
                .check(new ClassFileImporter().importPackages("io.axiswright.engine.supply.checker"));
    }
}
