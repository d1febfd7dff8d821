package boilwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The version of the program, as the build stamped it. */
public final class ProgramVersion {
    private static final String RESOURCE = "/boilwright/build.properties";
    private static final String CURRENT = read();

    private ProgramVersion() {}

    /** The version of the program that is running, such as 0.1.0. */
    public static String current() {
        return CURRENT;
    }

    private static String read() {
        Properties stamp = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program's build stamp is missing");
            }
            stamp.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return stamp.getProperty("version");
    }
}
