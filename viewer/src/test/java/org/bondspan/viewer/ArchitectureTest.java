package org.bondspan.viewer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
    private static final JavaClasses VIEWER = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.bondspan.viewer");

    @Test
    void theOptimizerIsReachedThroughItsUseCasesAndItsDrawingCode() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.bondspan.network..",
                        "org.bondspan.solve..",
                        "org.bondspan.review..",
                        "org.bondspan.takeoff..",
                        "org.bondspan.report..",
                        "org.bondspan.cli..",
                        "org.bondspan.code..",
                        "picocli..",
                        "tools.jackson..")
                .because("the viewer asks and shows; it does not judge, route or price")
                .check(VIEWER);
    }

    @Test
    void stateAndModelsKnowNothingOfTheWindow() {
        noClasses()
                .that()
                .resideInAnyPackage("..viewer.state..", "..viewer.model..", "..viewer.work..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .because("what the window says is tested without one")
                .check(VIEWER);
    }

    @Test
    void packagesDependOnEachOtherWithoutCycles() {
        slices().matching("org.bondspan.viewer.(*)..")
                .should()
                .beFreeOfCycles()
                .because("each package can then be read alone")
                .check(VIEWER);
    }

    @Test
    void nobodyPrintsOrEndsTheProgramButItsStart() {
        noClasses()
                .that()
                .resideOutsideOfPackage("..viewer.app..")
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .because("the window says what there is to say")
                .check(VIEWER);
    }
}
