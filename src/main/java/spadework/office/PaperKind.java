// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The papers of a set. */
public enum PaperKind {
    PROPOSAL("proposal", "proposal"),
    SCOPE("scope-of-work", "scope"),
    CONTRACT("contract", "contract"),
    WARRANTY("warranty", "certificate"),
    COST_SHEET("cost-sheet", "cost-sheet"),
    /** One for each change of the contract. */
    CHANGE_ORDER("change-order", "change-order"),
    /** Once it is recorded what was built. */
    COMPLETION("completion", "completion");

    private final String file;
    private final String template;

    PaperKind(String file, String template) {
        this.file = file;
        this.template = template;
    }

    /** Its file name without ending; also its name on the command line. */
    public String file() {
        return file;
    }

    /** The folder of its templates. */
    String template() {
        return template;
    }

    /** Whether the homeowner may have it: only a paper that is listed here, so that a new one stays in the office. */
    public boolean isForHomeowner() {
        return this == PROPOSAL
                || this == SCOPE
                || this == CONTRACT
                || this == WARRANTY
                || this == CHANGE_ORDER
                || this == COMPLETION;
    }

    /** Those that every job has, once; the others come with changes of the contract and with what was built. */
    public static List<PaperKind> ofEveryJob() {
        return List.of(PROPOSAL, SCOPE, WARRANTY, COST_SHEET);
    }

    /**
     * The paper of those templates.
     *
     * @throws java.util.NoSuchElementException if there is none
     */
    static PaperKind ofTemplate(String template) {
        return Arrays.stream(values())
                .filter(paper -> paper.template.equals(template))
                .findFirst()
                .orElseThrow();
    }

    /** The paper of that name, if there is one. */
    public static Optional<PaperKind> find(String name) {
        return Arrays.stream(values()).filter(paper -> paper.file.equals(name)).findFirst();
    }
}
