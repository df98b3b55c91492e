// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.nio.file.Path;
import spadework.form.UserSettings;

/** Says once, in settings of its own, where jobs live. */
final class KeptJobs {
    private KeptJobs() {}

    /** Argument: the folder of jobs. */
    public static void main(String[] arguments) {
        new UserSettings().keep(Path.of(arguments[0]));
    }
}
