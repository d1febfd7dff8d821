package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The text of a file, or one clear reason why there is none. */
final class FileText {
    /** Greatest size of a rig file, bytes; checked before anything is read. */
    static final int LARGEST = 4 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** Opens what is to be read. */
    @FunctionalInterface
    interface Opener {
        InputStream open() throws IOException;
    }

    private FileText() {}

    /**
     * The text of a file.
     *
     * @throws InputRefusedException when it is missing, a folder, unreadable, too large, empty or not text
     */
    static String of(Path file) {
        String name = Shown.printable(file.toString());
        if (Files.isDirectory(file)) {
            throw new InputRefusedException(Message.of(MessageKey.RIG_FILE_IS_FOLDER, name));
        }
        if (Files.notExists(file)) {
            throw new InputRefusedException(Message.of(MessageKey.RIG_FILE_MISSING, name));
        }
        try {
            if (Files.size(file) > LARGEST) {
                throw tooLarge(name, Files.size(file) + " bytes");
            }
        } catch (IOException fault) {
            throw unreadable(name, fault);
        }
        return read(name, () -> Files.newInputStream(file));
    }

    /**
     * The text of a stream. It is bounded too: what is not a plain file has no size to ask for.
     *
     * @throws InputRefusedException when it is unreadable, too large, empty or not text
     */
    static String read(String name, Opener opener) {
        byte[] bytes;
        try (InputStream stream = opener.open()) {
            bytes = stream.readNBytes(LARGEST + 1);
        } catch (IOException fault) {
            throw unreadable(name, fault);
        }
        if (bytes.length > LARGEST) {
            throw tooLarge(name, "more than " + LARGEST + " bytes");
        }
        String text = decode(name, bytes);
        if (text.isBlank()) {
            throw new InputRefusedException(Message.of(MessageKey.RIG_FILE_EMPTY, name));
        }
        return text;
    }

    private static String decode(String name, byte[] bytes) {
        if (bytes.length >= 2 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFF + 0xFE && bytes[0] != bytes[1]) {
            throw notText(name, "it looks like UTF-16; save it as UTF-8");
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw notText(name, "byte " + (i + 1) + " is zero");
            }
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw notText(name, "byte " + (in.position() + 1) + " is not UTF-8");
        }
        String text = out.flip().toString();
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static InputRefusedException notText(String name, String found) {
        return new InputRefusedException(Message.of(MessageKey.RIG_FILE_NOT_TEXT, name, found));
    }

    private static InputRefusedException tooLarge(String name, String size) {
        String most = LARGEST + " bytes (4 MB)";
        return new InputRefusedException(Message.of(MessageKey.RIG_FILE_TOO_LARGE, name, size, most));
    }

    private static InputRefusedException unreadable(String name, IOException fault) {
        return new InputRefusedException(Message.of(MessageKey.RIG_FILE_UNREADABLE, name, reason(fault)));
    }

    /** Why a file could not be read or written, in words; the operating system's own where it gives any. */
    static String reason(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (fault instanceof NoSuchFileException) {
            return "the folder or file does not exist";
        }
        return fault.getMessage() == null ? "the reason is not known" : Shown.printable(fault.getMessage());
    }
}
