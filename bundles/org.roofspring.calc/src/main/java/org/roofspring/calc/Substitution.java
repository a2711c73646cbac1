package org.roofspring.calc;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;

/** Puts values in place of symbols in a formula, for the workings. */
final class Substitution {
    private static final Pattern SYMBOL = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_']*");

    private Substitution() {
    }

    static String write(String formula, List<Working.Input> inputs) {
        Map<String, Quantity> values = new HashMap<>();
        inputs.forEach(input -> values.put(input.symbol(), input.value()));
        QuantityFormat format = new QuantityFormat(org.roofspring.quantity.UnitSystem.METRIC, "cur", 5);
        Matcher matcher = SYMBOL.matcher(formula);
        StringBuilder text = new StringBuilder();
        while (matcher.find()) {
            Quantity value = values.get(matcher.group());
            matcher.appendReplacement(text,
                    Matcher.quoteReplacement(value == null ? matcher.group() : format.format(value)));
        }
        return matcher.appendTail(text).toString();
    }
}
