// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number of a document, as {@code 2026-014-W1}.
 *
 * @param job the job's number
 * @param count from 1, within the job and the kind
 */
public record DocumentNumber(String job, DocumentKind kind, int count) {
    private static final Pattern TEXT = Pattern.compile("(.+)-([A-Z]{1,2})([1-9][0-9]{0,8})", Pattern.DOTALL);

    /** Control and format characters, as marks of direction, and separators of lines: a number has none. */
    private static final Pattern UNPRINTED = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]");

    public DocumentNumber {
        if (job.isBlank() || UNPRINTED.matcher(job).find() || count < 1) {
            throw new IllegalArgumentException("no number of a document: job \"" + job + "\", count " + count);
        }
    }

    /** As it is printed. */
    public String text() {
        return series() + count;
    }

    /** The number of the revision: proposals count their revisions, every other document is issued once. */
    public int revision() {
        return kind == DocumentKind.PROPOSAL ? count : 1;
    }

    /** Reads what {@link #text()} writes; empty for anything else. */
    public static Optional<DocumentNumber> of(String text) {
        Matcher parts = TEXT.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        for (DocumentKind kind : DocumentKind.values()) {
            if (kind.letters().equals(parts.group(2)) && !parts.group(1).isBlank()) {
                return Optional.of(new DocumentNumber(parts.group(1), kind, Integer.parseInt(parts.group(3))));
            }
        }
        return Optional.empty();
    }

    String series() {
        return job + "-" + kind.letters();
    }

    @Override
    public String toString() {
        return text();
    }
}
