// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.CancelFigure;
import spadework.office.CalculatorData;

/** Last day to cancel a contract signed at home. */
@Command(
        name = "cancel",
        description = {
            "Last day on which a contract signed at home may be cancelled: the federal rule and the state's,",
            "each counted its own way, and the latest. Not legal advice."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure cancel --signed 2026-07-01 --state MD --age 65",
            "  spadework figure cancel --signed 2026-07-01 --received 2026-07-03 --state NJ"
        })
public final class CancelCommand extends Calculator {
    @Option(names = "--signed", paramLabel = "DATE", description = "Day of signing: year-month-day, as 2026-07-01.")
    private String signed;

    @Option(names = "--state", paramLabel = "STATE", description = "State where the house stands, by its two letters.")
    private String state;

    @Option(names = "--age", paramLabel = "YEARS", description = "Age of the oldest buyer; unknown counts as old.")
    private String age;

    @Option(
            names = "--disaster",
            negatable = true,
            description = "The work repairs damage by a declared disaster; some states give more days.")
    private Boolean disaster;

    @Option(
            names = "--received",
            paramLabel = "DATE",
            description = "Day on which the buyer got the signed copy, if later: the state's days start there.")
    private String received;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        LocalDate signed = flags.get("--signed", this.signed, FlagKinds.DATE);
        String state = flags.get("--state", this.state, FlagKinds.state(calculators));
        Optional<Integer> age = flags.find("--age", this.age, FlagKinds.AGE);
        Optional<LocalDate> received = flags.find("--received", this.received, FlagKinds.DATE);
        Optional<Boolean> known = Optional.ofNullable(disaster);
        return () ->
                CancelFigure.of(state, calculators.law(state), new CancelFigure.Known(signed, received, age, known));
    }
}
