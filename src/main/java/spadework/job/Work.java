// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * What is dug, coated, piped and put back.
 *
 * @param protection what is done to keep house and yard from harm, one thing a line
 */
@RecordBuilder
public record Work(
        List<Wall> walls,
        List<Corner> corners,
        Water water,
        Restoration restoration,
        List<String> protection,
        Schedule schedule)
        implements WorkBuilder.With {

    public Work {
        walls = List.copyOf(walls);
        corners = List.copyOf(corners);
        protection = List.copyOf(protection);
    }
}
