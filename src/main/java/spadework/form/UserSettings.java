// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.nio.file.Path;
import java.util.Optional;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/** Keeps where jobs live among the user's own settings. */
public final class UserSettings implements Forms.Settings {
    private static final String JOBS = "jobs";

    private final Preferences settings = Preferences.userRoot().node("spadework");

    @Override
    public Optional<Path> jobs() {
        return Optional.ofNullable(settings.get(JOBS, null)).map(Path::of);
    }

    @Override
    public void keep(Path jobs) {
        settings.put(JOBS, jobs.toAbsolutePath().toString());
        try {
            settings.flush();
        } catch (BackingStoreException unwritable) {
            // Without it the person says once more where jobs live.
            return;
        }
    }
}
