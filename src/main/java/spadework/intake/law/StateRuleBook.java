// SPDX-License-Identifier: Apache-2.0
package spadework.intake.law;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.intake.source.FileText;
import spadework.intake.source.JsonPass;
import spadework.intake.source.SourceFile;
import spadework.law.HouseLaw;
import spadework.law.StateRules;

/**
 * The rules of the states: those that come with the program, with what a file beside the job changes.
 *
 * @param byState by two-letter code, and {@code US-FTC} for the federal floor
 */
public record StateRuleBook(Map<String, StateRules> byState) {
    private static final String RESOURCE = "/spadework/law/state-rules.json";
    private static final String BUNDLED = "the bundled state rules";

    public StateRuleBook {
        byState = Collections.unmodifiableMap(new LinkedHashMap<>(byState));
    }

    /**
     * The rules that come with the program.
     *
     * @throws IllegalStateException if they have a fault; a test reads them
     */
    public static StateRuleBook bundled() {
        return of(bundledFile());
    }

    /** The file of the rules that come with the program, as it is. */
    public static byte[] bundledFile() {
        try (InputStream in = StateRuleBook.class.getResourceAsStream(RESOURCE)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * The rules of a whole file, as of an earlier version of the program.
     *
     * @throws IllegalStateException if it has a fault
     */
    public static StateRuleBook of(byte[] file) {
        FileText text = FileText.decoded(file, BUNDLED);
        SourceFile sheet = JsonPass.over(BUNDLED, text.text());
        Map<String, StateRules> rules =
                sheet.root().map(new StateRuleReader(Map.of())::read).orElse(Map.of());
        List<Fault> faults = sheet.faults();
        if (text.fault().isPresent() || !faults.isEmpty()) {
            throw new IllegalStateException(
                    text.fault().orElseGet(() -> faults.get(0)).text());
        }
        return new StateRuleBook(rules);
    }

    /** The same with what a file says otherwise; its faults are on its sheet. */
    public StateRuleBook changedBy(SourceFile sheet) {
        return sheet.root()
                .map(new StateRuleReader(byState)::read)
                .map(StateRuleBook::new)
                .orElse(this);
    }

    /** The rules of a state; empty where they were not gathered. */
    public Optional<StateRules> find(String state) {
        return Optional.ofNullable(byState.get(state));
    }

    /** The law of contracts in a state: the federal floor, and the state's rules where they were gathered. */
    public HouseLaw at(String state) {
        return new HouseLaw(federal(), find(state));
    }

    /** The rules that hold in every state. */
    public StateRules federal() {
        return byState.get(StateRules.FEDERAL);
    }
}
