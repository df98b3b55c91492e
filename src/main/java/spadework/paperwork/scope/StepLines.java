// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import static spadework.paperwork.scope.StepKind.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.paperwork.Dossier;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.pricebook.WorkStep;
import spadework.schedule.Stage;
import spadework.schedule.Steps;
import spadework.takeoff.TakeoffLine;

/** Which steps do the priced lines of a job: what is sold is done, and what is done is sold or included. */
final class StepLines {
    /** Standing items of the bundled book that follow the job as a whole. */
    private static final Map<String, StepKind> STANDING = Map.ofEntries(
            Map.entry("LOCATE-811", LOCATE),
            Map.entry("LOCATE-PRIV", PRIVATE_LINES),
            Map.entry("LEAD-SAFE", LEAD_SAFE),
            Map.entry("SET-PROT", PROTECT),
            Map.entry("PLY-PATH", PROTECT),
            Map.entry("WALK-BRIDGE", WAY_IN),
            Map.entry("SUMP-LEAD", LEAD),
            Map.entry("SUMP-RISER", SUMP),
            Map.entry("DISCH-TRENCH", PIPE_TRENCH),
            Map.entry("PHOTO-REC", PHOTOS),
            Map.entry("FINAL-CLEAN", CLEAN_UP));

    private final Dossier dossier;

    StepLines(Dossier dossier) {
        this.dossier = dossier;
    }

    /** Codes of the lines of a place that a step of this kind does. */
    List<String> codes(StepKind kind, String wall) {
        return lines().stream()
                .filter(line -> kinds(line).contains(kind))
                .filter(line -> isAt(line, wall))
                .map(TakeoffLine::code)
                .distinct()
                .toList();
    }

    /** Lines of a wall, or of no wall, that no other step does, done at that time. */
    List<TakeoffLine> byHand(StepPage page, String wall) {
        List<TakeoffLine> found = new ArrayList<>();
        for (TakeoffLine line : lines()) {
            if (kinds(line).equals(Set.of(ITEM)) && page(line) == page && (page != StepPage.WALL || isAt(line, wall))) {
                found.add(line);
            }
        }
        return found;
    }

    WorkStep when(TakeoffLine line) {
        return Steps.of(item(line), line.section().kind());
    }

    LineItem item(TakeoffLine line) {
        return dossier.book().get(line.code());
    }

    private List<TakeoffLine> lines() {
        return dossier.takeoff().lines();
    }

    /** A line of the whole job is done at every wall where its kind of step stands. */
    private static boolean isAt(TakeoffLine line, String wall) {
        return line.section().kind() != Section.WALL || line.section().label().equals(wall);
    }

    private StepPage page(TakeoffLine line) {
        if (line.section().kind() == Section.WALL) {
            return StepPage.WALL;
        }
        return when(line).compareTo(WorkStep.DIG) <= 0 ? StepPage.COVER : StepPage.PIPES;
    }

    /** The steps that do a line; {@link StepKind#ITEM} alone where it needs a step of its own. */
    Set<StepKind> kinds(TakeoffLine line) {
        LineItem item = item(line);
        Optional<Measure> measure = item.follows();
        WorkStep when = when(line);
        if (when == WorkStep.PERMIT) {
            return Set.of(PERMIT);
        }
        if (when == WorkStep.ENGINEER) {
            return Set.of(ENGINEER);
        }
        // What an assembly puts in is more than the wall's own measure asks for, so it has a step of its own.
        boolean byQuantity = measure.isPresent()
                && measure.get() != Measure.JOB
                && line.from().isPresent();
        if (byQuantity && Steps.stage(dossier.job(), item, line) == Stage.ROOF_OVER) {
            return Set.of(ROOF_OVER);
        }
        if (byQuantity) {
            return kinds(measure.get(), line.section().kind());
        }
        return Set.of(STANDING.getOrDefault(line.code(), ITEM));
    }

    private static Set<StepKind> kinds(Measure measure, Section section) {
        return switch (measure) {
            case DUG, DIG_MACHINE, DIG_WALL_SIDE, DIG_BULK -> Set.of(DIG, SPOIL);
            case SPOIL -> Set.of(SPOIL);
            case DIG_HAND -> Set.of(DIG, DIG_BY_HAND, SPOIL);
            case SHIELD, SHIELD_DAY -> Set.of(BANK);
            case STRIP -> Set.of(STRIP);
            case CLEAN -> Set.of(SCRAPE, WASH, DRY);
            case FOOTING_CLEAN -> Set.of(FOOTING_WASH);
            case CRACK -> Set.of(CRACKS);
            case COVE -> Set.of(COVE);
            case COAT, COAT_GALLONS, SHEET -> Set.of(FINISH);
            case PARGE -> Set.of(PARGE, FINISH);
            case PROTECT -> Set.of(COVER_COATING);
            case WINDOW_WELL -> Set.of(WELLS_OUT, WELLS_BACK);
            case STONE, STONE_TONS -> Set.of(BED, STONE);
            case FABRIC -> Set.of(FABRIC);
            case DRAIN_PIPE, DRAIN_BEND, DRAIN_COUPLING, DRAIN_ADAPTER -> Set.of(PIPE);
            case DRAIN_TEE -> Set.of(LEAD);
            case CLEANOUT -> Set.of(CLEANOUTS);
            case MAIN_PIPE, MAIN_BEND -> Set.of(MAIN);
            case ROOF_PIPE, ROOF_BEND -> Set.of(ROOF_LINE);
            case DOWNSPOUT -> Set.of(DOWNSPOUTS);
            case PIPE_TRENCH -> Set.of(PIPE_TRENCH);
            case DAYLIGHT_OUTLET -> Set.of(OUTLET);
            case STORM_OUTLET -> Set.of(STORM);
            case SUMP -> Set.of(SUMP);
            case SUMP_DISCHARGE -> Set.of(DISCHARGE);
            case FLOW_TEST -> Set.of(HOLD_3);
            case BACKFILL -> Set.of(section == Section.WALL ? BACKFILL : FILL_PIPES);
            case SURPLUS, HAUL, HAUL_LOAD -> Set.of(HAUL);
            case IMPORT -> Set.of(IMPORT);
            case REGRADE -> Set.of(REGRADE);
            case TOPSOIL -> Set.of(TOPSOIL);
            case SEED -> Set.of(SEED);
            case SOD -> Set.of(SOD);
            case CONCRETE -> Set.of(CONCRETE_OUT, CONCRETE_BACK);
            case PLANTS -> Set.of(PLANTS_OUT, PLANTS_BACK);
            case TRENCH_INSPECTION -> Set.of(INSPECT);
            case PUMP_DAY -> Set.of(DEWATER);
            case WORKING_DAY, EXCAVATOR_DAY, STANDING_DAY, MOBILIZATION_TRIP, OVERTIME -> Set.of(SET_UP);
            case JOB, WALL_FOOT -> Set.of(ITEM);
        };
    }
}
