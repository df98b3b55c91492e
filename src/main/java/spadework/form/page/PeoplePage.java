// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import spadework.form.session.JobFiles;
import spadework.form.session.JobSession;

/** Who signs, the house, the ground, and what was found there, with photos. */
public final class PeoplePage extends FormPage {
    private final PhotoPane photos;

    public PeoplePage(JobSession session, JobFiles files) {
        super(session, JobPage.PEOPLE.word());
        JobPages.visit(this);
        JobPages.photos(this);
        photos = new PhotoPane(session, files);
        put(photos, "span 12, wmin 100");
        JobPages.mailing(this);
    }

    @Override
    public void showAll() {
        super.showAll();
        if (photos != null) {
            photos.showDraft();
        }
    }
}
