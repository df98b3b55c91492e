// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import spadework.cli.Spadework;

/** The program's own window, as the command {@code form} opens it. */
final class FormWindow {
    private FormWindow() {}

    /** Arguments: those of the command line. */
    public static void main(String[] arguments) throws InterruptedException {
        WindowWatch.begin();
        Spadework.main(arguments);
    }
}
