// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import spadework.form.session.JobSession;

/** The pages of a job's window; each is built when somebody goes there for the first time. */
public final class PagesOnDemand {
    private final Map<JobPage, Supplier<FormPage>> makers = new EnumMap<>(JobPage.class);
    private final Map<JobPage, FormPage> built = new EnumMap<>(JobPage.class);
    private final BiConsumer<JobPage, FormPage> added;

    /**
     * Knows the pages that are fields and lists alone.
     *
     * @param own the makers of the other pages
     * @param added told of each page once it is built
     */
    public PagesOnDemand(
            JobSession session, Map<JobPage, Supplier<FormPage>> own, BiConsumer<JobPage, FormPage> added) {
        this.added = added;
        JobPages.CONTENTS.forEach((page, content) -> makers.put(page, () -> {
            FormPage made = new FormPage(session, page.word());
            content.accept(made);
            return made;
        }));
        makers.putAll(own);
    }

    /** A page, built if it was not. */
    public FormPage at(JobPage page) {
        FormPage there = built.get(page);
        if (there != null) {
            return there;
        }
        FormPage made = makers.get(page).get();
        if (page.stop() == JobStop.VISIT || page.stop() == JobStop.PRICE) {
            made.readOnlyOnceSigned();
        }
        built.put(page, made);
        added.accept(page, made);
        return made;
    }

    /** A page, if somebody went there already. */
    public Optional<FormPage> ifBuilt(JobPage page) {
        return Optional.ofNullable(built.get(page));
    }

    /** The page that has all of a place of the job. */
    public static Optional<JobPage> holding(String pointer) {
        return pointer.isEmpty() ? Optional.empty() : PagePlaces.of(pointer);
    }
}
