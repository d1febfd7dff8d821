package boilwright.companion;

import java.io.Closeable;
import java.io.IOException;

/** An open log file, locked against every other writer. */
interface LogPlace extends Closeable {
    /** Writes bytes at its end. */
    void append(byte[] bytes) throws IOException;

    /** Returns when what was written is on the disk. */
    void force() throws IOException;

    /** Cuts off what lies behind a length, bytes. */
    void cut(long length) throws IOException;

    long length() throws IOException;

    byte[] content() throws IOException;

    /** Whether the file still stands under its name: one that was removed can be written, and nobody ever sees it. */
    boolean isThere() throws IOException;
}
