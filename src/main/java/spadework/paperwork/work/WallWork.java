package spadework.paperwork.work;

import java.util.List;

/**
 * One wall as the papers describe it.
 *
 * @param kind as {@code concrete block}
 * @param depth grade to footing top, one figure or from and to
 * @param trenchDepth the deeper end, to the bottom of the footing
 * @param protection one word: sloped, shielded or upright
 * @param slope horizontal for each foot up, as {@code 1}
 * @param handShare the share dug by hand, empty when none
 * @param strip what is taken off, by trade name
 * @param cracks length of cracks to be filled, empty when none
 * @param limits what limits the room beside the wall, one a line
 */
public record WallWork(
        String label,
        String where,
        String faces,
        String kind,
        String length,
        String depth,
        String trenchDepth,
        String bottomWidth,
        String footingThickness,
        String footingProjection,
        String protection,
        String slope,
        boolean hand,
        String handShare,
        List<String> strip,
        String cracks,
        boolean parge,
        int windowWells,
        List<String> openings,
        FinishWork finish,
        List<String> limits,
        List<MeasuredRow> quantities) {}
