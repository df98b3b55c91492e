// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import picocli.CommandLine.Option;

/** What every command that writes takes. The program sees to it that nothing is written ({@code DryRun}). */
public final class DryRunOption {
    /** The name by which the program finds it. */
    public static final String NAME = "--dry-run";

    @Option(names = NAME, description = "Check everything and tell what would be written, but write nothing.")
    @SuppressWarnings("UnusedVariable") // the program asks picocli whether it was given
    private boolean dry;
}
