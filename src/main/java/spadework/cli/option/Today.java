// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.time.LocalDate;
import picocli.CommandLine.Model.CommandSpec;

/** The program as it knows what day it is; nothing below the commands reads a clock. */
public interface Today {
    LocalDate today();

    /** The day of the program that a command belongs to. */
    static LocalDate of(CommandSpec command) {
        return command.root().userObject() instanceof Today program ? program.today() : LocalDate.now();
    }
}
