package org.bondspan.report.files;

import java.util.function.Supplier;

/**
 * A file to be written.
 *
 * @param name without directory
 * @param content its bytes, made when they are asked for
 */
public record OutputFile(String name, Supplier<byte[]> content) {}
