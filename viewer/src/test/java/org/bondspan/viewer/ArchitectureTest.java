package org.bondspan.viewer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
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

    @Test
    void classesAreNamedForWhatTheyAre() {
        noClasses()
                .should()
                .haveNameMatching(".*(Util|Helper|Manager|Impl)s?(\\$.*)?")
                .because("such names hide what a class is for")
                .check(VIEWER);
    }

    @Test
    void everyPackageIsNullMarkedAndSaysWhatItHolds() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            assertThat(files.filter(file -> file.toString().endsWith(".java"))
                            .map(Path::getParent)
                            .distinct())
                    .isNotEmpty()
                    .allSatisfy(directory -> assertThat(directory.resolve("package-info.java"))
                            .content()
                            .contains("@NullMarked")
                            .contains("/**"));
        }
    }

    @Test
    void everyTestClassIsFoundByTheBuild() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            assertThat(files.filter(file -> file.toString().endsWith(".java")).filter(ArchitectureTest::holdsTests))
                    .isNotEmpty()
                    .allSatisfy(
                            file -> assertThat(file.getFileName().toString()).endsWith("Test.java"));
        }
    }

    private static boolean holdsTests(Path file) {
        try {
            String text = Files.readString(file);
            return text.contains("@Test\n") || text.contains("@ParameterizedTest");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
