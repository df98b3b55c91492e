// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import spadework.register.IssuedFolders;

/** What a file of an office is, by its place: who may see it hangs on that. */
public enum FileKind {
    /** Margin, wages, terms. */
    COMPANY,
    /** Rules of a state, and what counsel said of them. */
    STATE_RULES,
    /** The price book, the usual jobs, the logo and whatever else the firm keeps. */
    FIRM,
    /** What was measured and agreed, notes and all. */
    JOB,
    /** The chain of what was issued and agreed. */
    REGISTER,
    /** A picture of the job. */
    PICTURE,
    /** What is printed for the crew. */
    CREW,
    /** Bills, receipts, statements, releases, the final account. */
    MONEY,
    /** Any other paper for the homeowner. */
    HOMEOWNER,
    /** Sources with costs in them, signed papers. */
    KEPT;

    /** The folder of a job for what is printed for the crew. */
    public static final String FOR_THE_CREW = "for-the-crew";
    /** The job itself. */
    public static final String JOB_FILE = "job.json";
    /** The chain, which only grows. */
    public static final String CHAIN = "register.jsonl";
    /** How long the chain is. */
    public static final String CHAIN_HEAD = "register.head";

    private static final Set<String> CHAINS = Set.of(CHAIN, CHAIN_HEAD);
    private static final Pattern PICTURES = Pattern.compile("[^/]+\\.(jpe?g|png)");
    private static final Pattern MONEYS =
            Pattern.compile(".*-(invoice|receipt|statement|late-notice|release|completion)\\.(pdf|xlsx)");

    /** What a file is. */
    public static FileKind of(String folder, String path) {
        if (folder.equals(StoredFolder.FIRM)) {
            return switch (path) {
                case "company.json" -> COMPANY;
                case "state-rules.json" -> STATE_RULES;
                default -> FIRM;
            };
        }
        String top = path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
        return switch (top) {
            case FOR_THE_CREW -> CREW;
            case IssuedFolders.HOMEOWNER -> MONEYS.matcher(path).matches() ? MONEY : HOMEOWNER;
            case "" -> alone(path);
            default -> KEPT;
        };
    }

    private static FileKind alone(String path) {
        if (CHAINS.contains(path)) {
            return REGISTER;
        }
        if (path.equals("state-rules.json")) {
            return STATE_RULES;
        }
        return PICTURES.matcher(path.toLowerCase(Locale.ROOT)).matches() ? PICTURE : JOB;
    }

    /** As it stands in tables: {@code STATE_RULES} is {@code state rules}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** By its word. */
    public static Optional<FileKind> ofWord(String word) {
        for (FileKind kind : values()) {
            if (kind.word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
