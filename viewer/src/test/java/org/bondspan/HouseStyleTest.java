package org.bondspan;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every module alike; here, because the viewer is built last and sees all of them. */
class HouseStyleTest {

    @Test
    void classesAreNamedForWhatTheyAre() {
        JavaClasses all = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.bondspan");
        assertThat(all.stream().map(JavaClass::getPackageName))
                .contains("org.bondspan.site", "org.bondspan.solve", "org.bondspan.viewer.state");
        noClasses()
                .should()
                .haveNameMatching(".*(Util|Helper|Manager|Impl)s?(\\$.*)?")
                .because("such names hide what a class is for")
                .check(all);
    }

    @ParameterizedTest
    @ValueSource(strings = {"shared", "optimizer", "viewer"})
    void everyPackageIsNullMarkedAndSaysWhatItHolds(String module) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
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

    @ParameterizedTest
    @ValueSource(strings = {"shared", "optimizer", "viewer"})
    void everyTestClassIsFoundByTheBuild(String module) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "test", "java"))) {
            assertThat(files.filter(file -> file.toString().endsWith(".java")).filter(HouseStyleTest::holdsTests))
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
