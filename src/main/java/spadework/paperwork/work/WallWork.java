// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;

/**
 * One wall as the papers describe it.
 *
 * @param kind as {@code concrete block}
 * @param depth grade to footing top, one figure or from and to
 */
public record WallWork(
        String label,
        String where,
        String faces,
        String kind,
        String length,
        String depth,
        TrenchWork trench,
        FootingWork footing,
        SurfaceWork surface,
        OpeningWork openings,
        FinishWork finish,
        List<MeasuredRow> quantities) {}
