package spadework.paperwork;

import java.util.List;
import spadework.drawing.Scene;

/**
 * A drawing with what is said under it.
 *
 * @param labels labels of the walls or pipes that it shows
 * @param caption one sentence
 */
public record Drawing(List<String> labels, String caption, Scene scene) {

    public Drawing {
        labels = List.copyOf(labels);
    }
}
