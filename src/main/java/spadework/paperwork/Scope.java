package spadework.paperwork;

import java.util.List;
import spadework.drawing.Scene;

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
public record Scope(
        Head head,
        Scene plan,
        List<WallWork> walls,
        List<Run> runs,
        List<OutletWork> outlets,
        boolean roofWater,
        boolean sump,
        List<Measured> quantities,
        List<String> protection,
        List<Note> notes,
        String deference,
        String locateTicket,
        String soil,
        List<DesignRow> design,
        List<String> sumps,
        AgreedParts agreed) {}
