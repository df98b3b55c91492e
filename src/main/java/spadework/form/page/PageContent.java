// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.function.Function;
import javax.swing.JComponent;
import spadework.form.field.BasePointer;
import spadework.form.session.JobSession;

/** What a page is made of, in the order of the page. */
interface PageContent {
    int COLUMNS = 12;

    /** Begins a group under a heading of its own. */
    void group(String key);

    /** Begins a group that most jobs have no use for: closed, under a line that says what is in it. */
    void rareGroup(String key);

    /** A value of the job, so many twelfths of the page wide. */
    void field(BasePointer base, String key, int wide);

    default void field(String key, int wide) {
        field(BasePointer.JOB, key, wide);
    }

    /** A value of the job that only a step writes. */
    void shown(BasePointer base, String key, int wide);

    /**
     * A list of the job.
     *
     * @return where its chosen row stands
     */
    BasePointer list(BasePointer list, int wide, String... columns);

    default BasePointer list(BasePointer list, String... columns) {
        return list(list, COLUMNS, columns);
    }

    /** Something of the page's own, which stands for no place of the job. */
    void own(Function<JobSession, JComponent> made, String how);
}
