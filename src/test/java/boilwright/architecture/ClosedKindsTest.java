package boilwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.LinePiece;
import boilwright.rig.Schedule;
import boilwright.rig.Supply;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Heat sources, supplies, elements, pieces, schedule steps and forelines are asked what they do, never what class they are. */
class ClosedKindsTest {
    private static final String WHY =
            "a chain of classes forgets a new kind without a word; methods and switches over its enum are found by the compiler";

    private static final Set<Class<?>> KINDS = Stream.of(
                    HeatSource.class,
                    Supply.class,
                    Supply.Capacity.class,
                    Cooling.Element.class,
                    LinePiece.Shape.class,
                    Schedule.Step.class,
                    Foreline.class)
            .flatMap(ClosedKindsTest::closed)
            .collect(Collectors.toUnmodifiableSet());

    private static Stream<Class<?>> closed(Class<?> type) {
        Stream<Class<?>> below = type.isSealed()
                ? Stream.of(type.getPermittedSubclasses()).flatMap(ClosedKindsTest::closed)
                : Stream.empty();
        return Stream.concat(Stream.of(type), below);
    }

    @Test
    void knowsTheKinds() {
        assertThat(KINDS)
                .contains(HeatSource.Induction.class, Supply.Tank.class, Cooling.Hose.class, LinePiece.Tube.class)
                .hasSizeGreaterThan(30);
    }

    /** Held by {@link ArrowsTest}, which has read the class files. */
    static ArchRule nobodyAsksForTheClassOfAKind() {
        return classes()
                .that()
                .resideOutsideOfPackages("boilwright.rig", "boilwright.rig.file")
                .should(askNoClass())
                .because(WHY);
    }

    private static ArchCondition<JavaClass> askNoClass() {
        return new ArchCondition<>("ask for no class of a kind") {
            @Override
            public void check(JavaClass asking, ConditionEvents events) {
                asking.getInstanceofChecks().stream()
                        .filter(check -> KINDS.stream()
                                .anyMatch(kind -> check.getRawType().isEquivalentTo(kind)))
                        .forEach(check -> events.add(SimpleConditionEvent.violated(check, check.toString())));
            }
        };
    }

    /** Class files show the casts that the compiler puts in for generics as well: what was written is in the source only. */
    @Test
    void nobodyCastsToAKind() throws IOException {
        List<Path> sources;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/boilwright"))) {
            sources = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.startsWith("src/main/java/boilwright/rig"))
                    .toList();
        }
        assertThat(sources).hasSizeGreaterThan(300);
        assertThat(casts(sources)).as(WHY).isEmpty();
    }

    @Test
    void theReaderOfSourcesSeesCasts() throws IOException {
        // the reader of rig files may cast, and does
        assertThat(casts(List.of(Path.of("src/main/java/boilwright/rig/file/HeatSourceFields.java"))))
                .isNotEmpty();
    }

    private static List<String> casts(List<Path> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> found = new ArrayList<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(sources);
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
            for (CompilationUnitTree unit : task.parse()) {
                unit.accept(new Casts(names(unit), unit.getSourceFile().getName(), found), null);
            }
        }
        return found;
    }

    /** The words by which a file can name a kind: with the type around it, or alone when it is imported. */
    private static Set<String> names(CompilationUnitTree unit) {
        Set<String> imports = unit.getImports().stream()
                .map(i -> i.getQualifiedIdentifier().toString())
                .collect(Collectors.toSet());
        Set<String> names = new TreeSet<>();
        for (Class<?> kind : KINDS) {
            String full = kind.getCanonicalName();
            names.add(full);
            names.add(full.substring("boilwright.rig.".length()));
            if (imports.contains(full)) {
                names.add(kind.getSimpleName());
            }
        }
        return names;
    }

    private static final class Casts extends TreeScanner<Void, Void> {
        private final Set<String> names;
        private final String file;
        private final List<String> found;

        Casts(Set<String> names, String file, List<String> found) {
            this.names = names;
            this.file = file;
            this.found = found;
        }

        private void look(Tree type, Tree whole) {
            if (type != null && names.contains(type.toString())) {
                found.add(file + ": " + whole);
            }
        }

        @Override
        public Void visitTypeCast(TypeCastTree tree, Void nothing) {
            look(tree.getType(), tree);
            return super.visitTypeCast(tree, nothing);
        }

        @Override
        public Void visitInstanceOf(InstanceOfTree tree, Void nothing) {
            look(tree.getType(), tree);
            return super.visitInstanceOf(tree, nothing);
        }

        @Override
        public Void visitMemberReference(MemberReferenceTree tree, Void nothing) {
            String on = tree.getQualifierExpression().toString();
            if (on.endsWith(".class") && names.contains(on.substring(0, on.length() - ".class".length()))) {
                found.add(file + ": " + tree);
            }
            return super.visitMemberReference(tree, nothing);
        }
    }
}
