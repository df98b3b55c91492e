// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;

/**
 * Whether both sides signed it.
 *
 * @param state {@code pending}, {@code accepted} or {@code declined}
 * @param by who decided for the homeowner
 * @param on when, in words
 * @param typed the name that was typed as a signature; empty where it was signed on paper
 */
public record ChangeDecision(String state, List<String> by, String on, String typed) {

    public ChangeDecision {
        by = List.copyOf(by);
    }
}
