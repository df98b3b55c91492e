// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.Picture;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;

/**
 * Everything the completion statement prints, finished: what was built beside what was agreed, and the final account.
 *
 * @param note what else was different
 * @param warranty the terms
 */
public record CompletionStatement(
        PaperHead head,
        Scene plan,
        CompletionDates dates,
        AgreedParts agreed,
        BuiltWork built,
        List<Picture> pictures,
        String note,
        FinalAccount account,
        WarrantyPromise warranty) {

    public CompletionStatement {
        pictures = List.copyOf(pictures);
    }
}
