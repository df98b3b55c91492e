// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;
import spadework.drawing.shape.Scene;

/**
 * A drawing with what is said under it.
 *
 * @param labels labels of the walls or pipes that it shows
 * @param caption one sentence
 */
public record CaptionedDrawing(List<String> labels, String caption, Scene scene) {

    public CaptionedDrawing {
        labels = List.copyOf(labels);
    }
}
