// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.util.List;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.draft.UsualJob;

/**
 * The kinds of job that the company keeps, and which of them this job is.
 *
 * @param chosen name of the one that somebody chose; empty where the job itself shows it
 */
public record UsualJobChoice(List<UsualJob> all, String chosen) {
    public static final UsualJobChoice NONE = new UsualJobChoice(List.of(), "");

    private static final List<String> TELLING =
            List.of("/walls/0/kind", "/site/space", "/water/outlets/0/kind", "/walls/0/finish/system");

    public UsualJobChoice {
        all = List.copyOf(all);
    }

    public UsualJobChoice choosing(String name) {
        return new UsualJobChoice(all, name);
    }

    /** The one that was chosen, or else the one that is most like the job. */
    public Optional<UsualJob> of(Draft job) {
        Optional<UsualJob> named =
                all.stream().filter(one -> one.name().equals(chosen)).findFirst();
        return named.or(() -> all.isEmpty() ? Optional.empty() : Optional.of(likest(job)));
    }

    private UsualJob likest(Draft job) {
        UsualJob likest = all.get(0);
        for (UsualJob one : all) {
            likest = alike(one, job) > alike(likest, job) ? one : likest;
        }
        return likest;
    }

    private static long alike(UsualJob usual, Draft job) {
        return TELLING.stream()
                .filter(place -> !job.shown(place).isEmpty()
                        && job.shown(place).equals(usual.written().shown(place)))
                .count();
    }
}
