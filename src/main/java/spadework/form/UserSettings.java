// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Keeps where jobs live among the user's own settings. */
public final class UserSettings implements Forms.Settings {
    private static final String JOBS = "jobs";
    private static final String BOUNDS = "bounds ";
    private static final String OPEN = "open groups";

    private final Preferences settings = Preferences.userRoot().node("spadework");

    @Override
    public Optional<Path> jobs() {
        return Optional.ofNullable(settings.get(JOBS, null)).map(Path::of);
    }

    @Override
    public Optional<Rectangle> bounds(String window) {
        String[] written = settings.get(BOUNDS + window, "").split(" ");
        if (written.length != 4 || !String.join("", written).matches("[-\\d]{4,24}")) {
            return Optional.empty();
        }
        int[] one = Stream.of(written).mapToInt(Integer::parseInt).toArray();
        return Optional.of(new Rectangle(one[0], one[1], one[2], one[3]));
    }

    @Override
    public void keep(String window, Rectangle bounds) {
        settings.put(BOUNDS + window, bounds.x + " " + bounds.y + " " + bounds.width + " " + bounds.height);
        flush();
    }

    @Override
    public Set<String> openGroups() {
        return Stream.of(settings.get(OPEN, "").split(" "))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
    }

    @Override
    public void keepOpenGroups(Set<String> open) {
        settings.put(OPEN, String.join(" ", open));
        flush();
    }

    @Override
    public void keep(Path jobs) {
        settings.put(JOBS, jobs.toAbsolutePath().toString());
        flush();
    }

    private void flush() {
        try {
            settings.flush();
        } catch (BackingStoreException unwritable) {
            // Without it the person says once more where jobs live.
            return;
        }
    }
}
