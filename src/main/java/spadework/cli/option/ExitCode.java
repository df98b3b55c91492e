// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

/** What a command tells the shell. */
public final class ExitCode {
    /** The command did what was asked. */
    public static final int DONE = 0;
    /** The input was read and refused; nothing was written. */
    public static final int REFUSED = 1;
    /** The command line could not be used, or a file could not be read or written. */
    public static final int UNUSABLE = 2;

    private ExitCode() {}
}
