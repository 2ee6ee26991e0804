package org.bondspan.io;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.json.JsonFault;
import org.bondspan.io.json.JsonText;
import org.bondspan.io.json.Node;
import org.bondspan.units.LengthUnit;

/** What every file begins with: one object, its format, its unit of length. */
final class FileRoot {
    private FileRoot() {}

    /** Throws {@link InputException} where the text is no object, or of none of these formats, the first the usual. */
    static Node.Struct parse(String text, String fileName, Problems problems, List<String> formats, String kind) {
        Node root = tree(text, fileName);
        if (!(root instanceof Node.Struct struct)) {
            problems.report(
                    root.spot(),
                    "",
                    "must be an object, not " + root.kind(),
                    "Write { \"format\": \"" + formats.get(0) + "\", ... }");
            throw problems.exception();
        }
        refuseOtherFormats(struct, problems, formats, kind);
        return struct;
    }

    private static Node tree(String text, String fileName) {
        try {
            return JsonText.parse(text);
        } catch (JsonFault fault) {
            Problem problem = new Problem(fileName, fault.line(), "", fault.reason(), fault.advice());
            throw new InputException(List.of(problem));
        }
    }

    /** Another kind of file would be nothing but mistakes: one message is clearer. */
    private static void refuseOtherFormats(Node.Struct struct, Problems problems, List<String> formats, String kind) {
        Optional<Node> format = struct.find("format");
        if (format.isPresent() && formats.stream().noneMatch(name -> isFormat(struct, name))) {
            problems.report(
                    format.get().spot(),
                    "format",
                    "is not \"" + String.join("\" or \"", formats) + "\"",
                    "Write \"" + formats.get(0) + "\" if this is a " + kind);
            problems.throwIfAny();
        }
    }

    static boolean isFormat(Node.Struct struct, String format) {
        return struct.find("format").orElse(struct) instanceof Node.Text text
                && text.value().equals(format);
    }

    /** Empty where none is given that is known. */
    static Optional<LengthUnit> findUnit(Node.Struct struct) {
        return struct.find("lengthUnit")
                .filter(Node.Text.class::isInstance)
                .flatMap(word -> LengthUnit.find(((Node.Text) word).value()));
    }

    /** Takes the fields that every file has: where its schema is, its format, its unit. */
    static void read(Fields fields, String format) {
        fields.findText("$schema");
        fields.require("format", "Write \"format\": \"" + format + "\"");
        Optional<String> symbol = fields.findText("lengthUnit");
        if (symbol.isPresent() && LengthUnit.find(symbol.get()).isEmpty()) {
            List<String> known =
                    Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).toList();
            fields.report(
                    "lengthUnit",
                    "\"" + symbol.get() + "\" is not a unit known here",
                    Nearest.advice(symbol.get(), known));
        }
    }
}
