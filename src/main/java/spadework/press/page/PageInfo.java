// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What a PDF says about itself beside its pages. Its title is the {@code <title>} of the template, for that is wording.
 *
 * @param language of the text, as {@code en-US}
 * @param author the firm that issues it
 * @param issued the date of the document set; it stands for every date in the file, so that the same input gives the
 *     same bytes
 * @param recordCode of the register, printed at the foot of an issued paper; empty for one that is not issued
 * @param governing the language of the paper that this one is a reading copy of; empty for a paper of its own
 */
public record PageInfo(String language, String author, LocalDate issued, String recordCode, String governing) {

    public PageInfo {
        Objects.requireNonNull(language);
        Objects.requireNonNull(author);
        Objects.requireNonNull(issued);
        Objects.requireNonNull(recordCode);
        Objects.requireNonNull(governing);
    }

    /** Of a paper of its own. */
    public PageInfo(String language, String author, LocalDate issued, String recordCode) {
        this(language, author, issued, recordCode, "");
    }

    /** Of a paper that is not issued. */
    public PageInfo(String language, String author, LocalDate issued) {
        this(language, author, issued, "");
    }
}
