package spadework.paperwork.scope;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.work.MeasuredRow;
import spadework.paperwork.work.OutletWork;
import spadework.paperwork.work.PipeDesignRow;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.WallWork;

/**
 * Everything the scope of work prints, finished. It holds no money.
 *
 * @param quantities of the sections that are not walls
 * @param design a row for each reach of pipe
 * @param sumps what each sump has to be, a sentence each
 * @param agreed the options and change orders that this work holds
 * @param notes safety and code notes, gravest first
 * @param deference the sentence that leaves the last word to local code and the competent person
 */
public record ScopeOfWork(
        PaperHead head,
        Scene plan,
        List<WallWork> walls,
        List<PipeWork> runs,
        List<OutletWork> outlets,
        boolean roofWater,
        boolean sump,
        List<MeasuredRow> quantities,
        List<String> protection,
        List<FindingNote> notes,
        String deference,
        String locateTicket,
        String soil,
        List<PipeDesignRow> design,
        List<String> sumps,
        AgreedParts agreed) {}
