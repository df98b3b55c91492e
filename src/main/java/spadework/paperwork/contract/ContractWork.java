// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.work.OutletWork;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.WallWork;

/**
 * The work as contracted, with options that were taken.
 *
 * @param materials principal materials with make, model, size and grade
 * @param before findings that have to be answered before work may start, in the homeowner's words
 * @param lead what is promised about coatings that may hold lead; its pamphlet is receipted (40 CFR 745.84(a))
 * @param options every option, taken or not
 * @param accepted whether the homeowner has chosen among them
 */
public record ContractWork(
        List<WallWork> walls,
        List<PipeWork> runs,
        List<OutletWork> outlets,
        List<String> materials,
        List<FindingNote> before,
        List<FindingNote> lead,
        List<OptionRow> options,
        boolean accepted) {

    public ContractWork {
        walls = List.copyOf(walls);
        runs = List.copyOf(runs);
        outlets = List.copyOf(outlets);
        materials = List.copyOf(materials);
        before = List.copyOf(before);
        lead = List.copyOf(lead);
        options = List.copyOf(options);
    }
}
