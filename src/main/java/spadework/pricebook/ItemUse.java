// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;

/**
 * When an item is priced, and when it is done.
 *
 * @param follows the measures that drive its quantity; empty when it is only put in by hand
 * @param standard true when it is priced wherever a measure it follows occurs; false when a job has to name it
 * @param unknown true when its unit price is quoted for what nobody can see before digging
 * @param step when it is done; empty where its measure or section says so
 */
@RecordBuilder
public record ItemUse(Optional<Measure> follows, boolean standard, boolean unknown, Optional<WorkStep> step)
        implements ItemUseBuilder.With {

    ItemUse onlyByName() {
        return withStandard(false);
    }
}
