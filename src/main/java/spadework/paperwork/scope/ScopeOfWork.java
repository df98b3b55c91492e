// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.work.MeasuredRow;
import spadework.paperwork.work.OutletWork;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.WallWork;

/**
 * Everything the scope of work prints, finished. It holds no money.
 *
 * @param steps all that is done, page by page
 * @param quantities of the sections that are not walls
 * @param protection how the home is protected
 * @param notes safety and code notes that no step says and no wall's page holds, gravest first
 * @param agreed the options and change orders that this work holds
 */
public record ScopeOfWork(
        PaperHead head,
        Scene plan,
        ScopeSteps steps,
        List<WallWork> walls,
        List<PipeWork> runs,
        List<OutletWork> outlets,
        ScopeWater water,
        List<MeasuredRow> quantities,
        ScopeSite site,
        List<String> protection,
        List<FindingNote> notes,
        AgreedParts agreed) {

    public ScopeOfWork {
        walls = List.copyOf(walls);
        runs = List.copyOf(runs);
        outlets = List.copyOf(outlets);
        quantities = List.copyOf(quantities);
        protection = List.copyOf(protection);
        notes = List.copyOf(notes);
    }
}
