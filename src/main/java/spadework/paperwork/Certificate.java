package spadework.paperwork;

import java.util.List;
import spadework.drawing.Scene;

/**
 * Everything the warranty certificate prints, finished.
 *
 * @param changes the change orders that moved what is covered
 */
public record Certificate(
        Head head,
        String number,
        Scene plan,
        Promise promise,
        List<WallWork> walls,
        List<Run> runs,
        String state,
        List<AgreedPart> changes) {}
