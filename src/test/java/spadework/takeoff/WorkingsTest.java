package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.Bid;
import spadework.samples.Samples;
import spadework.working.Worked;
import spadework.working.Working;

/** What is printed as a formula is what was computed: an independent evaluator works every one of them out again. */
class WorkingsTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void everyFormulaOfEverySampleGivesItsValue(Path sample) {
        Bid bid = Samples.bid(sample);
        List<Worked> worked = new ArrayList<>();
        bid.dossier().takeoff().quantities().forEach(quantity -> gather(quantity.working(), worked));
        bid.dossier().takeoff().purchases().forEach(purchase -> gather(purchase.working(), worked));
        bid.dossier().quote().buildUp().forEach(step -> gather(step, worked));
        assertThat(worked).hasSizeGreaterThan(100);
        for (Worked each : worked) {
            double again = evaluate(each);
            assertThat(again)
                    .as(each.name() + ": " + each.line())
                    .isCloseTo(each.number(), within(1e-9 * Math.max(1, Math.abs(each.number()))));
        }
    }

    private static void gather(Working working, List<Worked> found) {
        if (working instanceof Worked worked) {
            found.add(worked);
        }
        working.inputs().forEach(input -> gather(input, found));
    }

    private static double evaluate(Worked worked) {
        String expression = worked.formula()
                .replace('×', '*')
                .replace('÷', '/')
                .replace('−', '-')
                .replace("π", "pi");
        List<String> symbols = worked.inputs().stream().map(Working::symbol).distinct().toList();
        ExpressionBuilder builder = new ExpressionBuilder(rename(expression, symbols))
                .functions(MAX, MIN, CEIL)
                .variables(symbols.stream().map(symbol -> "v_" + symbol).collect(Collectors.toSet()));
        var built = builder.build();
        worked.inputs().forEach(input -> built.setVariable("v_" + input.symbol(), input.number()));
        return built.evaluate();
    }

    /** Keeps symbols apart from the evaluator's own names, as e. */
    private static String rename(String expression, List<String> symbols) {
        return java.util.regex.Pattern.compile("[A-Za-z][A-Za-z0-9_]*").matcher(expression)
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

    static List<Path> samples() {
        return Samples.papered();
    }
}
