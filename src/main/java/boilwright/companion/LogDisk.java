package boilwright.companion;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;

/** Where logs are written; tests put a full or broken one in its place. */
interface LogDisk {
    /** The disks of the system. */
    LogDisk SYSTEM = new LogDisk() {
        @Override
        public LogPlace create(Path file) throws IOException {
            return place(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
        }

        @Override
        public LogPlace open(Path file) throws IOException {
            return place(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        }
    };

    /** The file is being written by somebody else. */
    final class InUse extends IOException {
        private static final long serialVersionUID = 1;

        InUse() {
            super("another window or program is writing it");
        }
    }

    /** A new file; one that is there already is a fault. */
    LogPlace create(Path file) throws IOException;

    /** A file that is there. */
    LogPlace open(Path file) throws IOException;

    private static LogPlace place(Path file, OpenOption... options) throws IOException {
        return new OnDisk(file, FileChannel.open(file, options));
    }

    /** A file of the system. */
    final class OnDisk implements LogPlace {
        /** Far behind every byte, for on some systems nobody else may read what is locked. */
        private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

        private final Path file;
        private final FileChannel channel;
        private final FileLock lock;
        private final Object key;

        OnDisk(Path file, FileChannel channel) throws IOException {
            this.file = file;
            this.channel = channel;
            try {
                lock = locked(channel);
                key = key();
            } catch (IOException e) {
                channel.close();
                throw e;
            }
        }

        private static FileLock locked(FileChannel channel) throws IOException {
            try {
                FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
                if (lock == null) {
                    throw new InUse();
                }
                return lock;
            } catch (OverlappingFileLockException e) {
                throw new InUse();
            }
        }

        private Object key() throws IOException {
            return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        }

        @Override
        public void append(byte[] bytes) throws IOException {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            channel.position(channel.size());
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        }

        @Override
        public void force() throws IOException {
            channel.force(false);
        }

        @Override
        public void cut(long length) throws IOException {
            if (channel.size() > length) {
                channel.truncate(length);
            }
        }

        @Override
        public long length() throws IOException {
            return channel.size();
        }

        @Override
        public byte[] content() throws IOException {
            RunLogReader.requireSize(file, channel.size());
            ByteBuffer buffer = ByteBuffer.allocate((int) channel.size());
            int read = 0;
            while (buffer.hasRemaining() && read >= 0) {
                read = channel.read(buffer, buffer.position());
            }
            return java.util.Arrays.copyOf(buffer.array(), buffer.position());
        }

        @Override
        public boolean isThere() throws IOException {
            try {
                return Objects.equals(key, key());
            } catch (NoSuchFileException e) {
                return false;
            }
        }

        @Override
        public void close() throws IOException {
            try {
                lock.release();
            } finally {
                channel.close();
            }
        }
    }
}
