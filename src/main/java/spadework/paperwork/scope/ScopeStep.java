// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * A step of the work.
 *
 * @param number counted through the whole scope, from 1
 * @param text what is done, finished sentences
 * @param rule the rule that asks for it; empty where the trade does
 * @param items codes of the priced lines that are done by it; empty for a step that is included
 */
@RecordBuilder
public record ScopeStep(
        int number, StepKind kind, String text, String rule, List<StepEvidence> evidence, List<String> items)
        implements ScopeStepBuilder.With {

    public ScopeStep {
        evidence = List.copyOf(evidence);
        items = List.copyOf(items);
    }

    /** The hold point that it is, 1 to 3; 0 for a plain step. */
    public int hold() {
        return kind.hold();
    }

    /** Whether no line of the price pays for it by itself: it belongs to the work. */
    public boolean included() {
        return items.isEmpty();
    }

    /** The same under a number. */
    ScopeStep numbered(int as) {
        return withNumber(as);
    }
}
