package org.bondspan;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
    private static final JavaClasses SHARED = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.bondspan");

    @Test
    void sharedKnowsNeitherTheOptimizerNorTheViewer() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javafx..",
                        "picocli..",
                        "org.bondspan.network..",
                        "org.bondspan.solve..",
                        "org.bondspan.review..",
                        "org.bondspan.takeoff..",
                        "org.bondspan.sheet..",
                        "org.bondspan.report..",
                        "org.bondspan.usecase..",
                        "org.bondspan.cli..",
                        "org.bondspan.viewer..")
                .because("optimizer and viewer build on shared, never the other way round")
                .check(SHARED);
    }

    @Test
    void onlyInputAndOutputKnowJson() {
        noClasses()
                .that()
                .resideOutsideOfPackage("..io..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("tools.jackson..")
                .because("the model outlives its file format")
                .check(SHARED);
    }

    @Test
    void packagesDependOnEachOtherWithoutCycles() {
        slices().matching("org.bondspan.(**)")
                .should()
                .beFreeOfCycles()
                .because("each package can then be read alone")
                .check(SHARED);
    }

    @Test
    void siteLayoutAndFindingAreData() {
        classes()
                .that()
                .resideInAnyPackage("..site..", "..layout..", "..finding..")
                .and()
                .doNotHaveSimpleName("package-info")
                .should()
                .beRecords()
                .orShould()
                .beEnums()
                .orShould()
                .beInterfaces()
                .because("what a building is and what was found do not change")
                .check(SHARED);
    }

    /** Whoever handles an electrode, a path or an end then handles all kinds of them. */
    @Test
    void interfacesOfDataAreSealed() {
        assertThat(SHARED.stream()
                        .filter(type ->
                                type.isInterface() && !type.getSimpleName().equals("package-info"))
                        .filter(type -> type.getPackageName().matches("org\\.bondspan\\.(site|layout|finding)"))
                        .map(JavaClass::reflect))
                .isNotEmpty()
                .allMatch(Class::isSealed);
    }

    @Test
    void fieldsOfDataAreFinal() {
        classes()
                .that()
                .resideInAnyPackage("..units..", "..site..", "..layout..", "..finding..")
                .should()
                .haveOnlyFinalFields()
                .because("values are shared without copying")
                .check(SHARED);
    }
}
