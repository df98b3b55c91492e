// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import java.util.List;
import spadework.paperwork.work.CaptionedDrawing;

/**
 * A drawing as a page takes it in.
 *
 * @param labels what it shows, by label
 * @param caption what is said under it
 * @param svg the element
 */
public record PageFigure(List<String> labels, String caption, String svg) {

    public static List<PageFigure> of(List<CaptionedDrawing> drawings) {
        return drawings.stream()
                .map(drawing -> new PageFigure(drawing.labels(), drawing.caption(), SceneSvg.of(drawing.scene())))
                .toList();
    }
}
