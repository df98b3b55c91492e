// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/** An independent evaluator for the formulas that are printed. */
public final class Recomputed {
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    private Recomputed() {}

    /** Every worked number under a working, itself included. */
    public static List<Worked> under(Working working) {
        List<Worked> found = new ArrayList<>();
        gather(working, found);
        return found;
    }

    private static void gather(Working working, List<Worked> found) {
        if (working instanceof Worked worked) {
            found.add(worked);
        }
        working.inputs().forEach(input -> gather(input, found));
    }

    /** What the printed formula gives for the printed inputs. */
    public static double evaluate(Worked worked) {
        String expression = worked.formula()
                .replace('×', '*')
                .replace('÷', '/')
                .replace('−', '-')
                .replace("π", "pi");
        List<String> symbols =
                worked.inputs().stream().map(Working::symbol).distinct().toList();
        Expression built = new ExpressionBuilder(rename(expression, symbols))
                .functions(MAX, MIN, CEIL)
                .variables(symbols.stream().map(symbol -> "v_" + symbol).collect(Collectors.toSet()))
                .build();
        worked.inputs().forEach(input -> built.setVariable("v_" + input.symbol(), input.number()));
        return built.evaluate();
    }

    /** Keeps symbols apart from the evaluator's own names, as e. */
    private static String rename(String expression, List<String> symbols) {
        return NAME.matcher(expression)
                .replaceAll(found -> symbols.contains(found.group()) ? "v_" + found.group() : found.group());
    }

    private static final Function MAX = new Function("max", 2) {
        @Override
        public double apply(double... a) {
            return Math.max(a[0], a[1]);
        }
    };

    private static final Function MIN = new Function("min", 2) {
        @Override
        public double apply(double... a) {
            return Math.min(a[0], a[1]);
        }
    };

    private static final Function CEIL = new Function("ceil", 1) {
        @Override
        public double apply(double... a) {
            return Math.ceil(a[0] - 1e-9 * Math.max(1, Math.abs(a[0])));
        }
    };
}
