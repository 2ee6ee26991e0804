package org.bondspan.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.bondspan.site.Site;

/**
 * A site with the fingerprint of the text that it was read from.
 *
 * @param digest SHA-256 of the text in UTF-8, without byte order mark, in hexadecimal
 */
public record SiteFile(Site site, String digest) {
    /** Throws {@link InputException}. */
    public static SiteFile read(Path file) {
        return of(InputFile.text(file), file.toString());
    }

    /** All that the stream holds; the name is for messages. Throws {@link InputException}. */
    public static SiteFile read(InputStream in, String name) {
        try {
            return of(InputFile.text(in, name), name);
        } catch (IOException e) {
            throw InputFile.problem(name, "cannot be read", "Check where it comes from");
        }
    }

    private static SiteFile of(String text, String name) {
        return new SiteFile(SiteReader.parse(text, name), digest(text));
    }

    private static String digest(String text) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            // Every Java platform has SHA-256.
            throw new IllegalStateException(e);
        }
    }
}
