package spadework.paperwork.completion;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.Picture;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.work.QuantityChangeRow;

/**
 * Everything the completion statement prints, finished: what was built beside what was agreed, and the final account.
 *
 * @param completed the day from which the warranty runs, in words; empty until the job is closed
 * @param certificate number of the warranty certificate; empty until it is issued
 * @param ground stone, loads and soil: as agreed and as found
 * @param differences quantities that came out another, in the homeowner's words
 * @param note what else was different
 * @param warranty the terms
 */
public record CompletionStatement(
        PaperHead head,
        Scene plan,
        String started,
        String finished,
        String completed,
        String certificate,
        AgreedParts agreed,
        List<BuiltWallRow> walls,
        List<BuiltPipeRow> pipes,
        List<Ground> ground,
        List<Test> tests,
        List<QuantityChangeRow> differences,
        List<Picture> pictures,
        String note,
        FinalAccount account,
        WarrantyPromise warranty) {

    /** What the ground took or gave: as agreed, as it came. */
    public record Ground(String what, String agreed, String built) {}

    /** A flow test. */
    public record Test(String on, boolean passed, String what, String by) {}

    public CompletionStatement {
        walls = List.copyOf(walls);
        pipes = List.copyOf(pipes);
        ground = List.copyOf(ground);
        tests = List.copyOf(tests);
        differences = List.copyOf(differences);
        pictures = List.copyOf(pictures);
    }
}
