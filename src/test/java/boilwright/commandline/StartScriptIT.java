package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import boilwright.dashboard.ShownControls;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program as a person starts it. */
class StartScriptIT {
    private static final Path HOME =
            Path.of(System.getProperty("boilwright.home")).toAbsolutePath();
    private static final Path SCRIPT = HOME.resolve("bin/boilwright");

    @TempDir
    Path folder;

    /**
     * A program that ran.
     *
     * @param code its exit code
     * @param out what it printed
     * @param err what it said besides
     */
    private record Ended(int code, String out, String err) {}

    @BeforeAll
    static void onAMachineWithAShell() {
        assumeThat(Path.of("/bin/sh")).exists();
    }

    @Test
    void startsThroughALinkFromAFolderWithBlanks() throws Exception {
        Path blank = Files.createDirectory(folder.resolve("a folder with blanks"));
        Path link = Files.createSymbolicLink(blank.resolve("a link"), SCRIPT);
        Ended ended = run(blank, Map.of(), link.toString(), "--version");
        Files.delete(link);
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).matches("Boilwright \\d+\\.\\d+\\.\\d+\\R");
        assertThat(ended.err()).isEmpty();
    }

    @Test
    void worksFromACopyInAnotherPlaceWithoutAWordAboutTheArchive() throws Exception {
        Path copy = folder.resolve("moved here");
        copyAll(HOME, copy);
        Ended ended = run(folder, Map.of(), copy.resolve("bin/boilwright").toString(), "check", "no such rig.json");
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).startsWith("boilwright: ").contains("no such rig.json");
    }

    @Test
    void usesTheClassDataArchiveOfTheBuild() throws Exception {
        assumeThat(HOME.resolve("lib/boilwright.jsa")).exists();
        Map<String, String> strict = Map.of(
                "JAVA_HOME", System.getProperty("java.home"), "BOILWRIGHT_JAVA_OPTIONS", "-Xshare:on -Xlog:class+load");
        Ended ended = run(folder, strict, SCRIPT.toString(), "--version");
        assertThat(ended.code()).isZero();
        assertThat(ended.out())
                .containsPattern("boilwright\\.commandline\\.Boilwright source: shared objects file \\(top\\)");
    }

    @Test
    void answersADemoAndPassesItsExitCodeOn() throws Exception {
        Ended ended = run(folder, Map.of(), SCRIPT.toString(), "check", "demo:neon-workshop");
        assertThat(ended.code()).as(ended.err()).isEqualTo(1);
        assertThat(ended.out()).contains("x fails");
        assertThat(ended.err()).isEmpty();
    }

    @Test
    void drawsTheWindowWithoutAScreenAndWithoutAWord() throws Exception {
        Path picture = folder.resolve("window.png");
        Map<String, String> apart = Map.of("BOILWRIGHT_JAVA_OPTIONS", "-Dboilwright.state=" + folder.resolve("state"));
        Ended ended = run(
                folder,
                apart,
                SCRIPT.toString(),
                "dashboard",
                "demo:mirror-club",
                "--size",
                "1440x900",
                "--picture",
                picture.toString());
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        BufferedImage drawn = ImageIO.read(picture.toFile());
        assertThat(drawn.getWidth()).isEqualTo(1440);
        assertThat(drawn.getHeight()).isEqualTo(900);
    }

    /** The same jars and options as the window's, and another main class. */
    @Test
    void theControlsOfTheWindowsLibraryOpenWithoutAWord() throws Exception {
        Ended line = run(folder, javaThatShowsItsArguments(""), SCRIPT.toString(), "dashboard");
        List<String> arguments = new ArrayList<>(line.out().lines().toList());
        int jars = arguments.indexOf("-cp") + 1;
        String tests = Path.of("target", "test-classes").toAbsolutePath().toString();
        arguments.set(jars, arguments.get(jars) + System.getProperty("path.separator") + tests);
        arguments.set(jars + 1, ShownControls.class.getName());
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(arguments.subList(0, jars + 2));
        Ended ended = run(folder, Map.of(), command.toArray(String[]::new));
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out().lines()).containsExactly("shown");
        assertThat(ended.code()).isZero();
    }

    /** JavaFX comes on the class path; flags for its modules would only be warned of, unless Java itself has them. */
    @Test
    void opensTheModulesOfAJavaThatBringsJavaFxItself() throws Exception {
        String opened = "--add-opens=javafx.graphics/javafx.scene=ALL-UNNAMED";
        Ended with = run(
                folder,
                javaThatShowsItsArguments("MODULES=\"java.base javafx.base javafx.graphics\""),
                SCRIPT.toString(),
                "dashboard");
        assertThat(with.out().lines()).contains(opened, "--add-exports=javafx.base/com.sun.javafx.event=ALL-UNNAMED");
        Ended without = run(folder, javaThatShowsItsArguments("MODULES=\"java.base\""), SCRIPT.toString(), "dashboard");
        assertThat(without.out()).contains("-Xmx1g").doesNotContain("--add-");
        assertThat(with.err() + without.err()).isEmpty();
    }

    /** A folder like that of a Java, whose program prints what it was started with, one argument a line. */
    private Map<String, String> javaThatShowsItsArguments(String release) throws IOException {
        Path home = Files.createTempDirectory(folder, "java");
        Path program = Files.createDirectory(home.resolve("bin")).resolve("java");
        Files.writeString(program, "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.writeString(home.resolve("release"), release + "\n");
        return Map.of("JAVA_HOME", home.toString());
    }

    private static Ended run(Path in, Map<String, String> environment, String... command)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile("boilwright", ".out");
        Path err = Files.createTempFile("boilwright", ".err");
        try {
            ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)))
                    .directory(in.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile());
            builder.environment().putAll(environment);
            Process process = builder.start();
            process.getOutputStream().close();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    private static void copyAll(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }
}
