package org.bondspan.io;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.io.JsonStringEncoder;

/** Prints JSON that people can read too: what fits goes on one line, the rest is indented by two spaces. */
final class JsonPrinter {
    private static final int WIDTH = 110;
    private static final String INDENT = "  ";

    private JsonPrinter() {}

    /** Ends in a line break. Values are maps, lists, texts, whole numbers, decimals and null. */
    static String print(Map<String, @Nullable Object> document) {
        return broken(document, "") + "\n";
    }

    private static String print(@Nullable Object value, String indent) {
        String line = inline(value);
        return indent.length() + line.length() <= WIDTH ? line : broken(value, indent);
    }

    private static String broken(@Nullable Object value, String indent) {
        String deeper = indent + INDENT;
        List<String> parts = new ArrayList<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, member) -> parts.add(quoted(name) + ": " + print(member, deeper)));
            return brackets('{', parts, '}', indent);
        }
        if (value instanceof List<?> list) {
            list.forEach(item -> parts.add(print(item, deeper)));
            return brackets('[', parts, ']', indent);
        }
        return inline(value);
    }

    private static String brackets(char open, List<String> parts, char close, String indent) {
        String lineBreak = "\n" + indent;
        return open + lineBreak + INDENT + String.join("," + lineBreak + INDENT, parts) + lineBreak + close;
    }

    private static String inline(@Nullable Object value) {
        List<String> parts = new ArrayList<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, member) -> parts.add(quoted(name) + ": " + inline(member)));
            return "{" + String.join(", ", parts) + "}";
        }
        if (value instanceof List<?> list) {
            list.forEach(item -> parts.add(inline(item)));
            return "[" + String.join(", ", parts) + "]";
        }
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return value instanceof String text ? quoted(text) : String.valueOf(value);
    }

    private static String quoted(Object text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(text.toString())) + '"';
    }
}
