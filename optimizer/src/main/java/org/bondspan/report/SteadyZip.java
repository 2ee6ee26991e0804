package org.bondspan.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Packs an archive again without the hour at which it was written, so that equal contents are equal bytes. */
final class SteadyZip {
    /** The earliest time that an archive can hold. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final Pattern CREATED = Pattern.compile("<dcterms:created[^>]*>[^<]*</dcterms:created>");

    private SteadyZip() {}

    static byte[] of(byte[] archive) {
        try {
            // Entries carry no sizes of their own, so they are read by the directory at the end, of a file.
            Path file = Files.createTempFile("bondspan", ".zip");
            try {
                Files.write(file, archive);
                return packed(file);
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] packed(Path file) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipFile in = new ZipFile(file.toFile());
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry : Collections.list(in.entries())) {
                ZipEntry steady = new ZipEntry(entry.getName());
                steady.setTimeLocal(NO_TIME);
                out.putNextEntry(steady);
                out.write(withoutTime(entry.getName(), in.getInputStream(entry).readAllBytes()));
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] withoutTime(String name, byte[] content) {
        if (!name.equals("docProps/core.xml")) {
            return content;
        }
        String text = new String(content, StandardCharsets.UTF_8);
        return CREATED.matcher(text).replaceAll("").getBytes(StandardCharsets.UTF_8);
    }
}
