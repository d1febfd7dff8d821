package boilwright.rig.file;

import static boilwright.errors.Said.said;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What the reader says about files that hold no rig at all. */
class RigReaderFilesTest {
    @TempDir
    Path folder;

    private void says(Path file, String message) {
        assertThatThrownBy(() -> RigReader.read(file, Texts.FLUIDS, Set.of()))
                .isInstanceOf(InputRefusedException.class)
                .hasMessage(message);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("pump.json"), text);
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("pump.json"), bytes);
    }

    @Test
    void missing() {
        Path file = folder.resolve("none.json");
        says(file, file + ": there is no such file.");
    }

    @Test
    void aFolder() {
        says(folder, folder + ": this is a folder; a rig is a single file.");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void withoutPermission() throws IOException {
        Path file = file(Texts.sample("glass-in-mantle"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(file), "this user may read everything");
        says(file, file + ": the file cannot be read: permission denied.");
    }

    @Test
    void unreadable() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("Input/output error");
            }
        };
        assertThatThrownBy(() -> FileText.read("pump.json", () -> broken))
                .isInstanceOf(InputRefusedException.class)
                .hasMessage(said(MessageKey.RIG_FILE_UNREADABLE, "pump.json", "Input/output error"));
    }

    @Test
    void huge() throws IOException {
        Path file = file(" ".repeat(FileText.LARGEST + 1));
        says(file, file + ": the file has 4194305 bytes; a rig file has at most 4194304 bytes (4 MB).");
    }

    @Test
    void endless() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }
        };
        assertThatThrownBy(() -> FileText.read("pump.json", () -> endless))
                .hasMessage(said(
                        MessageKey.RIG_FILE_TOO_LARGE, "pump.json", "more than 4194304 bytes", "4194304 bytes (4 MB)"));
    }

    @Test
    void empty() throws IOException {
        Path file = file(" \n");
        says(file, file + ": the file is empty.");
    }

    @Test
    void binary() throws IOException {
        Path file = file(new byte[] {(byte) 0x7F, 'E', 'L', 'F', 2, 0, 1});
        says(file, file + ": this is not a text file: byte 6 is zero. A rig file is JSON text in UTF-8.");
        file(new byte[] {'{', '"', (byte) 0xE9, '"', '}'});
        says(file, file + ": this is not a text file: byte 3 is not UTF-8. A rig file is JSON text in UTF-8.");
        file("\uFEFF{}".getBytes(StandardCharsets.UTF_16LE));
        says(
                file,
                file + ": this is not a text file: it looks like UTF-16; save it as UTF-8. A rig file is JSON text in"
                        + " UTF-8.");
    }

    @Test
    void aByteOrderMarkIsHarmless() throws IOException {
        Path file = file("\uFEFF" + Texts.sample("glass-in-mantle"));
        assertThat(RigReader.read(file, Texts.FLUIDS, Set.of())).isEqualTo(Texts.read(Texts.sample("glass-in-mantle")));
    }

    @Test
    void truncatedAnywhereIsOneClearMessage() throws IOException {
        String whole = Texts.sample("glass-on-plate").strip();
        Path file = file(whole.substring(0, whole.indexOf("\"innerDiameter\": \"35") + 4));
        says(
                file,
                file + ": the file ends in the middle, at line 15, column 33, inside column.segments[0].height. It was"
                        + " probably cut off when it was copied or saved.");
        for (int length = 1; length < whole.length(); length++) {
            String cut = whole.substring(0, length);
            assertThat(Texts.faults(cut)).hasSize(1).first().asString().startsWith("pump.json: ");
        }
    }

    @Test
    void brokenJson() throws IOException {
        Path file = file("{\n  \"format\": 1\n  \"name\": \"x\"\n}");
        says(
                file,
                file
                        + ": this is not valid JSON at line 3, column 3, near \"\"name\": \"x\"\". Look for a missing or extra"
                        + " comma, quotation mark, colon or bracket.");
        file("{ \"format\": 01 }");
        assertThatThrownBy(() -> RigReader.read(file, Texts.FLUIDS, Set.of())).hasMessageContaining("not valid JSON");
        file("{ \"format\": NaN }");
        assertThatThrownBy(() -> RigReader.read(file, Texts.FLUIDS, Set.of())).hasMessageContaining("not valid JSON");
        file("// a remark\n{}");
        assertThatThrownBy(() -> RigReader.read(file, Texts.FLUIDS, Set.of())).hasMessageContaining("not valid JSON");
    }

    @Test
    void moreThanOneValue() throws IOException {
        Path file = file("{}\n{}");
        says(file, file + ": the rig ends before line 2, column 1, but more text follows.");
    }

    @Test
    void deep() throws IOException {
        Path file = file("{\"a\":\n" + "[".repeat(60) + "]".repeat(60) + "}");
        says(
                file,
                file
                        + ": lists and objects stand inside one another more than 50 deep at line 2; a rig file needs fewer"
                        + " than ten.");
        file("[".repeat(1_000_000));
        assertThatThrownBy(() -> RigReader.read(file, Texts.FLUIDS, Set.of()))
                .hasMessageContaining("more than 50 deep");
    }

    @Test
    void overlongNamesAndNumbers() throws IOException {
        Path file = file("{ \"format\": " + "1".repeat(101) + " }");
        assertThatThrownBy(() -> RigReader.read(file, Texts.FLUIDS, Set.of()))
                .hasMessageStartingWith(file + ": a name or a number at line 1, column ")
                .hasMessageEndingWith(" is longer than any that a rig file may have.");
    }

    @Test
    void notAnObject() throws IOException {
        Path file = file("[1, 2]");
        says(file, file + ", line 1: a rig file is one object in braces, but this file holds a list in brackets.");
    }

    @Test
    void theDemosAreThereAndNoOthers() {
        assertThat(RigReader.demoNames()).containsExactly("neon-workshop", "mirror-club", "teaching-lab");
        assertThatThrownBy(() -> RigReader.readDemo("neon-workshp", Texts.FLUIDS, Set.of()))
                .hasMessage(said(
                        MessageKey.RIG_DEMO_UNKNOWN_NEAR,
                        "neon-workshp",
                        "neon-workshop, mirror-club, teaching-lab",
                        "neon-workshop"));
        assertThatThrownBy(() -> RigReader.readDemo("x/../../y", Texts.FLUIDS, Set.of()))
                .hasMessage(said(MessageKey.RIG_DEMO_UNKNOWN, "x/../../y", "neon-workshop, mirror-club, teaching-lab"));
    }

    @Test
    void aStreamIsClosedAfterReading() {
        boolean[] closed = new boolean[1];
        InputStream stream = new ByteArrayInputStream("{}".getBytes(StandardCharsets.UTF_8)) {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        assertThat(FileText.read("pump.json", () -> stream)).isEqualTo("{}");
        assertThat(closed[0]).isTrue();
    }
}
