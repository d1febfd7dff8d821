package boilwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import org.junit.jupiter.api.Test;

class IoReasonTest {
    @Test
    void endsASentenceWithoutNamesOfClasses() {
        assertThat(IoReason.of(new NoSuchFileException("a"))).isEqualTo("it does not exist");
        assertThat(IoReason.of(new AccessDeniedException("a"))).isEqualTo("access to it is not permitted");
        assertThat(IoReason.of(new NotDirectoryException("a"))).isEqualTo("it is not a folder");
        assertThat(IoReason.of(new FileSystemException("a", null, "No space left on device")))
                .isEqualTo("No space left on device");
        assertThat(IoReason.of(new IOException("cut\noff"))).isEqualTo("cut off");
        assertThat(IoReason.of(new IOException())).isEqualTo("the system gave no reason");
    }
}
