package org.bondspan.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads the text of an input file; what keeps it from being read is an {@link InputException}. */
final class InputFile {
    /** Far above any building: a vertex takes some 20 bytes. */
    private static final int MAX_BYTES = 64 << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private InputFile() {}

    static String text(Path file) {
        String text = decoded(file, bytes(file));
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static byte[] bytes(Path file) {
        if (Files.isDirectory(file)) {
            throw problem(file, "is a directory", "Name the file in it");
        }
        if (!Files.exists(file)) {
            throw problem(file, "does not exist", "Check its name and the directory it is looked for in");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MAX_BYTES + 1);
            if (bytes.length > MAX_BYTES) {
                throw problem(
                        file, "is larger than 64 MB", "Check that it is the right file: one site is one building");
            }
            return bytes;
        } catch (IOException e) {
            throw problem(file, "cannot be read", "Check that it is a file which you may read");
        }
    }

    private static String decoded(Path file, byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw problem(file, "is not UTF-8 text", "Save it as UTF-8");
        }
    }

    private static InputException problem(Path file, String message, String advice) {
        return new InputException(List.of(new Problem(file.toString(), 0, "", message, advice)));
    }
}
