// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The screen of the window tests: one in memory, unless {@code spadework.screen} is {@code real}. */
public final class Screen implements ExecutionCondition {
    static {
        if (!"real".equals(System.getProperty("spadework.screen"))) {
            try {
                Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
            } catch (ClassNotFoundException missing) {
                throw new ExceptionInInitializerError(missing);
            }
        }
    }

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return ConditionEvaluationResult.enabled("a screen is there");
    }
}
