// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spadework.figure.Answer;
import spadework.figure.WrongInputs;
import spadework.office.CalculatorData;

/** One calculator: reads its flags, all faults at once, then answers. */
abstract class Calculator implements Callable<Integer> {
    @Option(names = "--json", description = "Print the answer and its working as JSON, unrounded.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    /** Something that can be worked out once every flag could be read. */
    interface Problem {
        Answer solve() throws WrongInputs;
    }

    /** Reads the flags. */
    abstract Problem read(Flags flags, CalculatorData calculators);

    @Override
    public Integer call() {
        CommandLine line = spec.commandLine();
        CalculatorData calculators = new CalculatorData();
        Flags flags = new Flags();
        Problem problem = read(flags, calculators);
        if (!flags.faults().isEmpty()) {
            flags.faults().forEach(line.getErr()::println);
            return CommandLine.ExitCode.USAGE;
        }
        try {
            Answer answer = problem.solve();
            if (json) {
                line.getOut().println(calculators.listing(answer));
            } else {
                calculators.text(answer).forEach(line.getOut()::println);
            }
            return CommandLine.ExitCode.OK;
        } catch (WrongInputs wrong) {
            line.getErr()
                    .println(Flags.message(
                            spec.qualifiedName().replaceFirst("^\\S+ ", ""),
                            wrong.found(),
                            wrong.allowed(),
                            wrong.fix()));
            return CommandLine.ExitCode.USAGE;
        }
    }
}
