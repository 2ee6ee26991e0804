package org.bondspan.io.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** Parses JSON text (RFC 8259, nothing more lenient) into nodes, in one pass. */
public final class JsonText {
    /** Deeper than any site, shallow enough for the stack. */
    private static final int MAX_DEPTH = 64;

    /** Decimal digits before the point beyond which a number is taken for a slip and not computed with. */
    private static final int MAX_DIGITS_BEFORE_POINT = 12;

    private static final int MAX_ZEROS_BEHIND_POINT = 40;

    /** A text cut off within true, false, null or a number. */
    private static final Pattern ENDS_WITHIN_WORD =
            Pattern.compile("(\\b(tr?u?|fa?l?s?|nu?l?)|-|\\d\\.|\\d[eE][+-]?)\\z");

    private static final JsonFactory FACTORY = JsonFactory.builder().build();

    private final JsonParser parser;
    private final String text;

    private JsonText(JsonParser parser, String text) {
        this.parser = parser;
        this.text = text;
    }

    /** The whole text as one value; throws {@link JsonFault} when it is not exactly one. */
    public static Node parse(String text) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            return new JsonText(parser, text).document();
        }
    }

    private Node document() {
        try {
            if (parser.nextToken() == null) {
                throw new JsonFault(Spot.START, "the file is empty", "Write a JSON object { ... } into it");
            }
            Node root = value(parser.currentToken(), 0);
            if (parser.nextToken() != null) {
                throw new JsonFault(here(), "more text follows after the end", "Remove what follows the last bracket");
            }
            return root;
        } catch (UnexpectedEndOfInputException e) {
            throw cutOff(spotOf(e.getLocation()));
        } catch (JacksonException e) {
            throw notJson(e);
        }
    }

    private Node value(JsonToken token, int depth) {
        Spot spot = here();
        if (depth > MAX_DEPTH) {
            throw new JsonFault(
                    spot,
                    "brackets are nested more than " + MAX_DEPTH + " deep",
                    "Check for brackets that are opened and never closed");
        }
        return switch (token) {
            case START_OBJECT -> struct(spot, depth);
            case START_ARRAY -> array(spot, depth);
            case VALUE_STRING -> new Node.Text(spot, parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Decimal(spot, decimal(parser.getString()));
            case VALUE_TRUE -> new Node.Flag(spot, true);
            case VALUE_FALSE -> new Node.Flag(spot, false);
            case VALUE_NULL -> new Node.Nothing(spot);
            default -> throw cutOff(spot);
        };
    }

    private Node struct(Spot spot, int depth) {
        List<Node.Member> members = new ArrayList<>();
        while (next() != JsonToken.END_OBJECT) {
            Spot nameSpot = here();
            String name = parser.currentName();
            members.add(new Node.Member(nameSpot, name, value(next(), depth + 1)));
        }
        return new Node.Struct(spot, members);
    }

    private Node array(Spot spot, int depth) {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
            items.add(value(token, depth + 1));
        }
        return new Node.Array(spot, items);
    }

    private JsonToken next() {
        JsonToken token = parser.nextToken();
        if (token == null) {
            throw cutOff(here());
        }
        return token;
    }

    /** Never computes with exponents: a file may hold 1e999999999, of which a single addition would fill the memory. */
    private static Optional<BigDecimal> decimal(String text) {
        BigDecimal value;
        try {
            value = new BigDecimal(text);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
        long digitsBeforePoint = (long) value.precision() - value.scale();
        if (value.signum() == 0 || digitsBeforePoint < -MAX_ZEROS_BEHIND_POINT) {
            return Optional.of(BigDecimal.ZERO);
        }
        return digitsBeforePoint > MAX_DIGITS_BEFORE_POINT ? Optional.empty() : Optional.of(value);
    }

    private Spot here() {
        return spotOf(parser.currentTokenLocation());
    }

    private static Spot spotOf(TokenStreamLocation location) {
        return new Spot(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    private static JsonFault cutOff(Spot spot) {
        return new JsonFault(
                spot,
                "the file ends before its last bracket is closed",
                "It may be cut off: compare it with its source");
    }

    private JsonFault notJson(JacksonException e) {
        TokenStreamLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
        Spot spot = spotOf(location);
        int offset = (int) location.getCharOffset();
        if (ENDS_WITHIN_WORD.matcher(text).replaceFirst("").stripTrailing().length() <= offset) {
            return cutOff(spot);
        }
        String place = " at column " + spot.column() + ", near: " + JsonAdvice.excerpt(text, offset);
        return e instanceof StreamConstraintsException
                ? new JsonFault(
                        spot, "a number or text is too long" + place, "Check it: no site needs a number that long")
                : new JsonFault(spot, "is not JSON" + place, JsonAdvice.at(text, offset));
    }
}
