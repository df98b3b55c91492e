// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import spadework.draft.Pointer;
import spadework.form.field.BasePointer;
import spadework.form.session.JobSession;

/** The places of the job that a page holds, known before the page is built. */
final class PagePlaces implements PageContent {
    private static final Map<JobPage, PagePlaces> ALL = all();

    private final Set<String> places = new LinkedHashSet<>();

    private PagePlaces() {}

    private static Map<JobPage, PagePlaces> all() {
        Map<JobPage, Consumer<PageContent>> contents = new EnumMap<>(JobPages.CONTENTS);
        contents.put(JobPage.PRICE, PricePage::lists);
        contents.put(JobPage.AGREEMENT, AgreementPage::places);
        Map<JobPage, PagePlaces> all = new EnumMap<>(JobPage.class);
        contents.forEach((page, content) -> {
            PagePlaces recorded = new PagePlaces();
            content.accept(recorded);
            all.put(page, recorded);
        });
        return all;
    }

    /** The page that has all of a place; a second view of it is not meant. */
    static Optional<JobPage> of(String pointer) {
        String format = pointer.replaceAll("/\\d+(?=/|$)", "/0");
        return ALL.entrySet().stream()
                .filter(entry -> entry.getValue().places.stream().anyMatch(place -> touches(format, place)))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    static boolean touches(String format, String place) {
        return Pointer.isIn(format, place) || Pointer.isIn(place, format);
    }

    @Override
    public void group(String key) {
        // A heading is no place.
    }

    @Override
    public void rareGroup(String key) {
        // A heading is no place.
    }

    @Override
    public void field(BasePointer base, String key, int wide) {
        places.add(base.format(key));
    }

    @Override
    public void shown(BasePointer base, String key, int wide) {
        places.add(base.format(key));
    }

    @Override
    public BasePointer list(BasePointer list, int wide, String... columns) {
        places.add(list.format());
        return new BasePointer(list.format("/0"), Optional::empty);
    }

    @Override
    public void own(Function<JobSession, JComponent> made, String how) {
        // It stands for no place.
    }
}
