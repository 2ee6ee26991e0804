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
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw problem(name, "is a directory", "Name the file in it");
        }
        if (!Files.exists(file)) {
            throw problem(name, "does not exist", "Check its name and the directory it is looked for in");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return text(in, name);
        } catch (IOException e) {
            throw problem(name, "cannot be read", "Check that it is a file which you may read");
        }
    }

    /** All that the stream holds; the name is for messages. */
    static String text(InputStream in, String name) throws IOException {
        byte[] bytes = in.readNBytes(MAX_BYTES + 1);
        if (bytes.length > MAX_BYTES) {
            throw problem(name, "is larger than 64 MB", "Check that it is the right file: one site is one building");
        }
        String text = decoded(bytes, name);
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static String decoded(byte[] bytes, String name) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw problem(name, "is not UTF-8 text", "Save it as UTF-8");
        }
    }

    static InputException problem(String name, String message, String advice) {
        return new InputException(List.of(new Problem(name, 0, "", message, advice)));
    }
}
