package boilwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import boilwright.errors.MessageKey;
import boilwright.errors.OutputNotWrittenException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    @TempDir
    Path folder;

    @Test
    void writesANewFileAndReplacesAnOldOne() throws IOException {
        Path file = folder.resolve("time line.csv");
        AtomicFile.write(file, bytes("first"));
        AtomicFile.write(file, bytes("second"));
        assertThat(file).hasContent("second");
        assertThat(names()).containsExactly("time line.csv");
    }

    @Test
    void writesBehindASymbolicLinkAndLeavesTheLink() throws IOException {
        Path real = Files.writeString(folder.resolve("real.csv"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), real);
        AtomicFile.write(link, bytes("new"));
        assertThat(real).hasContent("new");
        assertThat(link).isSymbolicLink();
    }

    @Test
    void refusesAFolderAMissingFolderAndADeviceWithoutLeavingAnything() throws IOException {
        assertRefused(folder, "it is a folder");
        assertRefused(folder.resolve("missing/a.csv"), "its folder does not exist");
        Path file = Files.writeString(folder.resolve("plain"), "x");
        assertRefused(file.resolve("a.csv"), "its folder is a file");
        assertThat(names()).containsExactly("plain");
    }

    @Test
    void refusesADevice() {
        Path device = Path.of("/dev/full");
        assumeThat(device).exists();
        assertRefused(device, "it is not a plain file");
    }

    @Test
    void writesNoneOfSeveralWhenOneCannotBeWritten() throws IOException {
        Path good = Files.writeString(folder.resolve("good.csv"), "old");
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        contents.put(good, bytes("new"));
        contents.put(folder.resolve("missing/bad.png"), bytes("new"));
        assertThatThrownBy(() -> AtomicFile.writeAll(contents)).isInstanceOf(OutputNotWrittenException.class);
        assertThat(good).hasContent("old");
        assertThat(names()).containsExactly("good.csv");
    }

    @Test
    void lookingAheadTouchesNothing() throws IOException {
        Path old = Files.writeString(folder.resolve("old.csv"), "old");
        AtomicFile.requireWritable(old);
        AtomicFile.requireWritable(folder.resolve("new.csv"));
        assertThat(old).hasContent("old");
        assertThat(names()).containsExactly("old.csv");
    }

    private void assertRefused(Path file, String why) {
        assertThatThrownBy(() -> AtomicFile.requireWritable(file))
                .isInstanceOfSatisfying(OutputNotWrittenException.class, refusal -> {
                    assertThat(refusal.reason().key()).isEqualTo(MessageKey.OUTPUT_NOT_WRITTEN);
                    assertThat(refusal.reason().arguments()).containsExactly(file.toString(), why);
                });
        assertThatThrownBy(() -> AtomicFile.write(file, bytes("x"))).isInstanceOf(OutputNotWrittenException.class);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
