package org.bondspan.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** The one place that rounds and prints numbers: two decimals, halves away from zero. */
public final class Numbers {
    private Numbers() {}

    /** Rounded to 0.01 without trailing zeros, as results write it. */
    public static BigDecimal rounded(BigDecimal value) {
        BigDecimal rounded = value.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** For people: thousands separated, always two decimals: {@code 1,234.50}. */
    public static String print(BigDecimal value) {
        return grouped("#,##0.00").format(value.setScale(2, RoundingMode.HALF_UP));
    }

    /** {@code 412.50 ft}. */
    public static String print(Length length, LengthUnit unit) {
        return print(length.in(unit)) + " " + unit.symbol();
    }

    /** {@code 213.71 lb} with feet, in kg with metres. */
    public static String print(Weight weight, LengthUnit unit) {
        return print(weight.in(unit)) + " " + unit.weightSymbol();
    }

    /** {@code $1,234.50}, {@code 1,234.50 EUR}. */
    public static String print(Money money, String currency) {
        String sign = money.cents() < 0 ? "-" : "";
        String amount = print(money.amount().abs());
        return currency.equals("USD") ? sign + "$" + amount : sign + amount + " " + currency;
    }

    /** A conductor area as the trade says it: {@code 2,000 kcmil}, {@code 167.8 kcmil}. */
    public static String printArea(long circularMils) {
        return grouped("#,##0.###").format(BigDecimal.valueOf(circularMils, 3)) + " kcmil";
    }

    /** {@code 1 violation}, {@code 3 violations}. */
    public static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private static DecimalFormat grouped(String pattern) {
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
    }
}
