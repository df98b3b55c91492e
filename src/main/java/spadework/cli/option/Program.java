// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ScopeType;

/** What every command of the program has: its day, its office, help, version and exit codes. */
@Command(
        name = "spadework",
        version = "spadework 1.0.0",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        description = "Measures, checks, prices and papers the work that keeps water out of houses from the outside.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:everything asked for was done",
            "1:a job was refused: its file is at fault, or a stop is open; a register was changed; a warranty forbids"
                    + " it",
            "2:the command line, a template or a folder cannot be used"
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework documents sample-quotes/block-basement-to-swale --out documents")
public abstract class Program implements Today {
    private final LocalDate today;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its value is asked for by name
    private OfficeOption office;

    protected Program(LocalDate today) {
        this.today = today;
    }

    @Override
    public final LocalDate today() {
        return today;
    }
}
