package boilwright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.Console;
import java.io.PrintStream;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between the packages and the rules that keep the model usable behind any surface. */
class ArrowsTest {
    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("boilwright");

    /** One test a rule. Not by the rules' own test engine: under this build's test runner it runs none and says nothing. */
    @TestFactory
    Stream<DynamicTest> rules() {
        return Arrays.stream(ArrowsTest.class.getDeclaredFields())
                .filter(field -> field.getType() == ArchRule.class)
                .map(field -> DynamicTest.dynamicTest(field.getName(), () -> ((ArchRule) field.get(null)).check(MAIN)));
    }

    @Test
    void looksAtEveryPackage() {
        assertThat(MAIN.stream().map(JavaClass::getPackageName).distinct())
                .contains(
                        "boilwright.errors",
                        "boilwright.rig.file",
                        "boilwright.water",
                        "boilwright.thermal",
                        "boilwright.commandline");
    }

    static final ArchRule ARROWS_POINT_ONE_WAY = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("commandline")
            .definedBy("boilwright.commandline..")
            .layer("dashboard")
            .definedBy("boilwright.dashboard..")
            .layer("report")
            .definedBy("boilwright.report..")
            .layer("drill")
            .definedBy("boilwright.drill..")
            .layer("companion")
            .definedBy("boilwright.companion..")
            .layer("sequence")
            .definedBy("boilwright.sequence..")
            .layer("spread")
            .definedBy("boilwright.spread..")
            .layer("choice")
            .definedBy("boilwright.choice..")
            .layer("answers")
            .definedBy("boilwright.answers..")
            .layer("estimate")
            .definedBy("boilwright.estimate..")
            .layer("thermal")
            .definedBy("boilwright.thermal..")
            .layer("water")
            .definedBy("boilwright.water..")
            .layer("vacuum")
            .definedBy("boilwright.vacuum..")
            .layer("rise")
            .definedBy("boilwright.rise..")
            .layer("heattransfer")
            .definedBy("boilwright.heattransfer..")
            .layer("gasflow")
            .definedBy("boilwright.gasflow..")
            .layer("rigfile")
            .definedBy("boilwright.rig.file..")
            .layer("rig")
            .definedBy("boilwright.rig")
            .layer("outgassing")
            .definedBy("boilwright.outgassing..")
            .layer("fluid")
            .definedBy("boilwright.fluid..")
            .layer("numerics")
            .definedBy("boilwright.numerics..")
            .layer("files")
            .definedBy("boilwright.files..")
            .whereLayer("commandline")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("dashboard")
            .mayOnlyBeAccessedByLayers("commandline")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("dashboard", "commandline")
            .whereLayer("drill")
            .mayOnlyBeAccessedByLayers("report", "dashboard", "commandline")
            .whereLayer("companion")
            .mayOnlyBeAccessedByLayers("report", "dashboard", "commandline")
            .whereLayer("sequence")
            .mayOnlyBeAccessedByLayers("companion", "report", "dashboard", "commandline")
            .whereLayer("spread")
            .mayOnlyBeAccessedByLayers("report", "dashboard", "commandline")
            .whereLayer("choice")
            .mayOnlyBeAccessedByLayers("report", "dashboard", "commandline")
            .whereLayer("answers")
            .mayOnlyBeAccessedByLayers(
                    "choice", "spread", "sequence", "drill", "companion", "report", "dashboard", "commandline")
            .whereLayer("estimate")
            .mayOnlyBeAccessedByLayers("choice", "answers", "spread", "report", "dashboard", "commandline")
            .whereLayer("thermal")
            .mayOnlyBeAccessedByLayers(
                    "estimate",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "companion",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("water")
            .mayOnlyBeAccessedByLayers(
                    "thermal",
                    "estimate",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "companion",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("vacuum")
            .mayOnlyBeAccessedByLayers(
                    "thermal",
                    "estimate",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("rise")
            .mayOnlyBeAccessedByLayers("answers", "report", "dashboard", "commandline")
            .whereLayer("heattransfer")
            .mayOnlyBeAccessedByLayers("water", "thermal", "choice", "answers")
            .whereLayer("gasflow")
            .mayOnlyBeAccessedByLayers(
                    "rigfile",
                    "water",
                    "outgassing",
                    "vacuum",
                    "thermal",
                    "choice",
                    "answers",
                    "sequence",
                    "drill",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("rigfile")
            .mayOnlyBeAccessedByLayers("estimate", "spread", "report", "dashboard", "commandline")
            .whereLayer("rig")
            .mayOnlyBeAccessedByLayers(
                    "rigfile",
                    "water",
                    "vacuum",
                    "estimate",
                    "thermal",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "companion",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("outgassing")
            .mayOnlyBeAccessedByLayers(
                    "rigfile",
                    "vacuum",
                    "thermal",
                    "estimate",
                    "choice",
                    "answers",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("fluid")
            .mayOnlyBeAccessedByLayers(
                    "rig",
                    "rigfile",
                    "heattransfer",
                    "gasflow",
                    "water",
                    "vacuum",
                    "thermal",
                    "estimate",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("numerics")
            .mayOnlyBeAccessedByLayers(
                    "fluid",
                    "heattransfer",
                    "gasflow",
                    "water",
                    "vacuum",
                    "rise",
                    "thermal",
                    "estimate",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "report",
                    "dashboard",
                    "commandline")
            .whereLayer("files")
            .mayOnlyBeAccessedByLayers(
                    "fluid",
                    "rigfile",
                    "rise",
                    "choice",
                    "answers",
                    "spread",
                    "sequence",
                    "drill",
                    "companion",
                    "report",
                    "dashboard",
                    "commandline")
            .because("each package can then be read, tested and replaced knowing only what lies below it");

    static final ArchRule ERRORS_KNOW_NOTHING = noClasses()
            .that()
            .resideInAPackage("boilwright.errors..")
            .should()
            .dependOnClassesThat(resideInAPackage("boilwright..").and(not(resideInAPackage("boilwright.errors.."))))
            .because("every other package carries its messages");

    static final ArchRule THE_BOTTOM_USES_ONLY_ERRORS = classes()
            .that()
            .resideInAnyPackage("boilwright.units..", "boilwright.files..", "boilwright.numerics..")
            .should()
            .onlyDependOnClassesThat(not(resideInAPackage("boilwright.."))
                    .or(resideInAnyPackage(
                            "boilwright.units..",
                            "boilwright.files..",
                            "boilwright.numerics..",
                            "boilwright.errors..")))
            .because("they know nothing of pumps and can be understood alone");

    static final ArchRule A_RISE_TEST_NEEDS_NO_RIG = classes()
            .that()
            .resideInAPackage("boilwright.rise..")
            .should()
            .onlyDependOnClassesThat(not(resideInAPackage("boilwright.."))
                    .or(resideInAnyPackage(
                            "boilwright.rise..",
                            "boilwright.numerics..",
                            "boilwright.units..",
                            "boilwright.files..",
                            "boilwright.errors..")))
            .because("a record says what it says of any chamber");

    static final ArchRule NO_CYCLES = slices().matching("boilwright.(**)")
            .should()
            .beFreeOfCycles()
            .because("packages in a cycle are one package with several names");

    static final ArchRule ONLY_THE_COMMAND_LINE_PRINTS = noClasses()
            .that()
            .resideOutsideOfPackage("boilwright.commandline..")
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(PrintStream.class, Console.class)
            .because("a model that prints can't stand behind a window or another program");

    static final ArchRule NOBODY_USES_THE_STANDARD_STREAMS = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("even the command line prints to streams it is given: in UTF-8, and where a test can read them");

    static final ArchRule ONLY_THE_COMMAND_LINE_ENDS_THE_PROGRAM = noClasses()
            .that()
            .resideOutsideOfPackage("boilwright.commandline..")
            .should()
            .callMethod(System.class, "exit", int.class)
            .because("whoever asked the question decides what happens after the answer");

    static final ArchRule NO_TRACES_ON_THE_SCREEN = noClasses()
            .should()
            .callMethod(Throwable.class, "printStackTrace")
            .because("a trace helps nobody at the pump; it belongs into the fault report");

    static final ArchRule ONLY_A_WINDOW_USES_JAVAFX = noClasses()
            .that()
            .resideOutsideOfPackage("boilwright.dashboard..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("javafx..")
            .because("everything else must run on machines without a screen");

    static final ArchRule ONLY_PICTURES_DRAW = noClasses()
            .that()
            .resideOutsideOfPackages("boilwright.report..", "boilwright.dashboard..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..", "org.jfree..")
            .because("drawing is slow to load and no part of an answer");

    static final ArchRule ONLY_THE_COMMAND_LINE_KNOWS_ITS_LIBRARY = noClasses()
            .that()
            .resideOutsideOfPackage("boilwright.commandline..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..")
            .because("what is typed in a terminal is translated once, at the edge");

    static final ArchRule ANSWERS_HAVE_NO_CLOCK = noClasses()
            .that()
            .resideOutsideOfPackages("boilwright.commandline..", "boilwright.dashboard..")
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Instant.class, "now")
            .because("the same rig must give the same answer to the last bit, whenever it is asked");

    static final ArchRule NOBODY_ASKS_FOR_THE_CLASS_OF_A_KIND = ClosedKindsTest.nobodyAsksForTheClassOfAKind();

    static final ArchRule ANSWERS_HAVE_NO_CHANCE = noClasses()
            .should()
            .callMethod(Math.class, "random")
            .orShould()
            .callConstructor(Random.class)
            .because("chance comes only from named, seeded streams");
}
