package org.bondspan;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
    private static final JavaClasses BONDSPAN = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.bondspan");

    @Test
    void packagesDependOnEachOtherWithoutCycles() {
        slices().matching("org.bondspan.(*)..")
                .should()
                .beFreeOfCycles()
                .because("each package can then be read alone")
                .check(BONDSPAN);
    }

    @Test
    void theSolverKnowsNeitherTheTradeNorAnyLibrary() {
        classes()
                .that()
                .resideInAPackage("org.bondspan.solve..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("org.bondspan.solve..", "java..", "org.jspecify..")
                .because("a proof over integers is read and tested alone")
                .check(BONDSPAN);
    }

    @Test
    void onlyUseCasesOpenNetworkAndSolver() {
        noClasses()
                .that()
                .resideOutsideOfPackages("org.bondspan.network..", "org.bondspan.solve..", "org.bondspan.usecase..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.bondspan.network..", "org.bondspan.solve..")
                .because("use cases are the one door for command line and viewer")
                .check(BONDSPAN);
    }

    @Test
    void theReviewJudgesIndependentlyOfWhatFindsRoutes() {
        noClasses()
                .that()
                .resideInAPackage("org.bondspan.review..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.bondspan.network..", "org.bondspan.solve..", "org.bondspan.usecase..")
                .because("one error must not both find a route and approve it")
                .check(BONDSPAN);
        noClasses()
                .that()
                .resideInAnyPackage("org.bondspan.network..", "org.bondspan.solve..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.bondspan.review..")
                .because("one error must not both find a route and approve it")
                .check(BONDSPAN);
    }

    @Test
    void drawingsAreMadeFromTheModelAlone() {
        classes()
                .that()
                .resideInAPackage("org.bondspan.sheet..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "org.bondspan.sheet..",
                        "org.bondspan.site..",
                        "org.bondspan.layout..",
                        "org.bondspan.finding..",
                        "org.bondspan.code..",
                        "org.bondspan.units..",
                        "org.apache.batik.svggen..",
                        "org.apache.pdfbox..",
                        "org.apache.fontbox..",
                        "de.rototor.pdfbox..",
                        "org.w3c.dom..",
                        "java..",
                        "javax.imageio..",
                        "javax.xml..",
                        "org.jspecify..")
                .because("screen, paper and tests draw whatever answer they have")
                .check(BONDSPAN);
    }

    @Test
    void theCommandLineOnlyReadsAsksAndPrints() {
        classes()
                .that()
                .resideInAPackage("org.bondspan.cli..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "org.bondspan.cli..",
                        "org.bondspan.usecase..",
                        "org.bondspan.report..",
                        "org.bondspan.sheet",
                        "org.bondspan.takeoff..",
                        "org.bondspan.price..",
                        "org.bondspan.io",
                        "org.bondspan.units..",
                        "org.bondspan.finding..",
                        "org.bondspan.site..",
                        "org.bondspan.layout..",
                        "picocli..",
                        "java..",
                        "org.jspecify..")
                .because("commands are thin")
                .check(BONDSPAN);
    }

    @Test
    void onlyTheCommandLineParsesArguments() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.bondspan.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .because("the parser can then be replaced")
                .check(BONDSPAN);
    }

    @Test
    void onlyTheCommandLineUsesStandardStreamsAndEndsTheProgram() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.bondspan.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .because("the viewer calls the same code")
                .check(BONDSPAN);
    }

    @Test
    void nothingButInputAndOutputKnowsJson() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.bondspan.io..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("tools.jackson..")
                .because("the model outlives its file format")
                .check(BONDSPAN);
    }
}
