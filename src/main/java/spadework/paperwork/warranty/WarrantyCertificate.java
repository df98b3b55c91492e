// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.part.AgreedPart;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.WallWork;

/**
 * Everything the warranty certificate prints, finished.
 *
 * @param changes the change orders that moved what is covered
 */
public record WarrantyCertificate(
        PaperHead head,
        String number,
        Scene plan,
        WarrantyPromise promise,
        List<WallWork> walls,
        List<PipeWork> runs,
        String state,
        List<AgreedPart> changes) {}
