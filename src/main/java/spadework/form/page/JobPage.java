// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.Locale;
import java.util.Optional;
import spadework.form.kit.Messages;

/** The pages of a job, in the order of the way through the form. */
public enum JobPage {
    START(JobStop.VISIT),
    PLAN(JobStop.VISIT),
    PEOPLE(JobStop.VISIT),
    WALLS(JobStop.VISIT),
    WATER(JobStop.VISIT),
    RESTORATION(JobStop.VISIT),
    PRICE(JobStop.PRICE),
    TERMS(JobStop.PRICE),
    OPTIONS(JobStop.PRICE),
    PAPERS(JobStop.PAPERS),
    AGREEMENT(JobStop.AGREEMENT),
    CHANGES(JobStop.AGREEMENT),
    BUILT(JobStop.FINISH);

    private final JobStop stop;

    JobPage(JobStop stop) {
        this.stop = stop;
    }

    public JobStop stop() {
        return stop;
    }

    /** The word that stands for it in names of controls and keys of words. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is called on the way through the form. */
    public String title() {
        return Messages.of("page." + word());
    }

    /** The first page of the next stop. */
    public Optional<JobPage> next() {
        int after = stop.ordinal() + 1;
        return after < JobStop.values().length
                ? Optional.of(JobStop.values()[after].pages().get(0))
                : Optional.empty();
    }
}
