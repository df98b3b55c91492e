package spadework.press;

import java.util.List;
import spadework.paperwork.Drawing;

/**
 * A drawing as a page takes it in.
 *
 * @param labels what it shows, by label
 * @param caption what is said under it
 * @param svg the element
 */
public record Figure(List<String> labels, String caption, String svg) {

    public static List<Figure> of(List<Drawing> drawings) {
        return drawings.stream()
                .map(drawing -> new Figure(drawing.labels(), drawing.caption(), SceneSvg.of(drawing.scene())))
                .toList();
    }
}
