package boilwright.rise;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import boilwright.files.IoReason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The text of a record's file, or one clear reason why there is none. */
final class RecordText {
    /** Greatest size of a file, bytes. */
    static final int LARGEST = 4 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int LONGEST_SHOWN = 60;

    private RecordText() {}

    /**
     * The text of a file.
     *
     * @throws InputRefusedException when it is missing, a folder, unreadable, too large, empty or not text
     */
    static String of(Path file) {
        String name = printable(file.toString());
        if (Files.isDirectory(file)) {
            throw refused(MessageKey.RISE_FILE_UNREADABLE, name, "it is a folder");
        }
        byte[] bytes;
        // Read up to the limit, not asked for its size: what is no plain file has none.
        try (InputStream stream = Files.newInputStream(file)) {
            bytes = stream.readNBytes(LARGEST + 1);
        } catch (IOException e) {
            throw refused(MessageKey.RISE_FILE_UNREADABLE, name, IoReason.of(e));
        }
        if (bytes.length > LARGEST) {
            throw refused(MessageKey.RISE_FILE_TOO_LARGE, name, (LARGEST >> 20) + " MB");
        }
        String text = decode(name, bytes);
        if (text.isBlank()) {
            throw refused(MessageKey.RISE_FILE_EMPTY, name);
        }
        return text;
    }

    private static String decode(String name, byte[] bytes) {
        if (bytes.length >= 2 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFF + 0xFE && bytes[0] != bytes[1]) {
            throw refused(MessageKey.RISE_FILE_NOT_TEXT, name, "it looks like UTF-16; save it as UTF-8");
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw refused(MessageKey.RISE_FILE_NOT_TEXT, name, "byte " + (i + 1) + " is zero");
            }
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw refused(MessageKey.RISE_FILE_NOT_TEXT, name, "it is not UTF-8");
        }
    }

    /** Text from outside as it may stand in a message: on one line, without what a terminal would obey. */
    static String printable(String text) {
        return text.replaceAll("[\\p{C}\\p{Zl}\\p{Zp}]", "?");
    }

    /** The same, in quotation marks and not endless. */
    static String quoted(String text) {
        String cut = text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
        return '"' + printable(cut) + '"';
    }

    private static InputRefusedException refused(MessageKey fault, String name, String... values) {
        return new InputRefusedException(RecordFaults.at(fault, name, values));
    }
}
