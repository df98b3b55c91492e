// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.io.Console;
import java.util.Optional;

/** Whether somebody sits at a terminal, or another program reads and writes. */
public final class AtTerminal {
    private AtTerminal() {}

    /** Has newer Java versions tell it as version 17 does: they give a console to everybody unless asked not to. */
    public static void prepare() {
        System.setProperty("jdk.console", "java.base");
    }

    /** The console of whoever sits there; empty where input or output goes elsewhere. */
    public static Optional<Console> console() {
        return Optional.ofNullable(System.console());
    }
}
