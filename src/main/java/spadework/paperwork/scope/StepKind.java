// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import static spadework.paperwork.scope.StepPage.COVER;
import static spadework.paperwork.scope.StepPage.PIPES;
import static spadework.paperwork.scope.StepPage.WALL;

import java.util.Locale;
import java.util.Set;
import spadework.pricebook.WorkStep;

/**
 * What a step of the work is. Their order is the trade's: on each page the steps stand as they do here.
 *
 * <p>A step is due because a priced line is done by it, or because it belongs to the work and is named as included.
 */
public enum StepKind {
    ENGINEER(COVER, WorkStep.ENGINEER, "", Set.of()),
    PERMIT(COVER, WorkStep.PERMIT, "", Set.of()),
    LOCATE(COVER, WorkStep.SET_UP, "49 CFR 196.103, 196.107, 196.109", Set.of("locate-keep")),
    PRIVATE_LINES(COVER, WorkStep.SET_UP, "", Set.of("private-lines")),
    PROTECT(COVER, WorkStep.SET_UP, "", Set.of()),
    WAY_IN(
            COVER,
            WorkStep.SET_UP,
            "29 CFR 1926.651(l)",
            Set.of(
                    "way-in-bridge",
                    "way-in-bridge-low",
                    "way-in-last",
                    "way-in-free",
                    "way-in-shut",
                    "way-in-front-door",
                    "way-in-not-free")),
    SET_UP(COVER, WorkStep.SET_UP, "", Set.of()),
    PLANTS_OUT(COVER, WorkStep.SET_UP, "", Set.of()),
    CONCRETE_OUT(COVER, WorkStep.DIG, "", Set.of()),

    LOOK_FIRST(
            WALL,
            WorkStep.DIG,
            "",
            Set.of("bow-unmeasured", "tie-unseen", "unseen-horizontal-crack", "unseen-displaced")),
    ASK_FIRST(WALL, WorkStep.DIG, "", Set.of("tree-at-cut", "neighbor-footing-unmeasured")),
    LINE(WALL, WorkStep.DIG, "29 CFR 1926.651(b)", Set.of("hand-dig-zone")),
    DIG(WALL, WorkStep.DIG, "IBC 1804.1", Set.of("not-below-footing")),
    SPOIL(WALL, WorkStep.DIG, "29 CFR 1926.651(j)(2)", Set.of("spoil-back", "machine-back")),
    BANK(WALL, WorkStep.DIG, "29 CFR 1926.652(a)(1)", Set.of("slope-back", "shield", "ends-open")),
    INSPECT(
            WALL,
            WorkStep.DIG,
            "29 CFR 1926.651(k)(1)",
            Set.of("daily-inspection", "soil-class-confirm", "water-in-trench")),
    LADDER(WALL, WorkStep.DIG, "29 CFR 1926.651(c)(2)", Set.of("ladder")),
    DIG_BY_HAND(WALL, WorkStep.DIG, "", Set.of()),
    DEWATER(WALL, WorkStep.DEWATER, "", Set.of()),
    WELLS_OUT(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    LEAD_SAFE(WALL, WorkStep.PREPARE_WALL, "40 CFR 745 subpart E", Set.of("lead-paint")),
    STRIP(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    SCRAPE(WALL, WorkStep.PREPARE_WALL, "", Set.of("dust-and-fumes")),
    WASH(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    HOLD_1(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    CRACKS(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    COVE(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    PARGE(WALL, WorkStep.PREPARE_WALL, "IRC R406.1", Set.of()),
    DRY(WALL, WorkStep.PREPARE_WALL, "", Set.of()),
    FINISH(WALL, WorkStep.COAT, "", Set.of()),
    HOLD_2(WALL, WorkStep.COAT, "", Set.of("inspection-holds")),
    COVER_COATING(WALL, WorkStep.COAT, "", Set.of()),
    FOOTING_WASH(WALL, WorkStep.DRAIN, "", Set.of()),
    BED(WALL, WorkStep.DRAIN, "IRC R405.1", Set.of()),
    PIPE(WALL, WorkStep.DRAIN, "", Set.of()),
    STONE(WALL, WorkStep.DRAIN, "IRC R405.1", Set.of()),
    FABRIC(WALL, WorkStep.DRAIN, "", Set.of()),
    WELLS_BACK(WALL, WorkStep.DRAIN, "", Set.of()),
    BACKFILL(WALL, WorkStep.BACKFILL, "IBC 1804.3", Set.of("backfill-lifts", "backfill-braced")),

    PIPE_LINE(PIPES, WorkStep.PIPES, "29 CFR 1926.651(b)", Set.of("hand-dig-trench")),
    PIPE_TRENCH(PIPES, WorkStep.PIPES, "29 CFR 1926.651(j)(2)", Set.of("spoil-back")),
    PIPE_WALL(PIPES, WorkStep.PIPES, "29 CFR 1926.651(i)", Set.of("pipe-bank-under-wall", "pipe-bank-way-unknown")),
    PIPE_BANK(PIPES, WorkStep.PIPES, "29 CFR 1926.652(a)(1)", Set.of("upright-shallow", "slope-back", "shield")),
    PIPE_INSPECT(
            PIPES,
            WorkStep.PIPES,
            "29 CFR 1926.651(k)(1)",
            Set.of("daily-inspection", "soil-class-confirm", "water-in-trench")),
    PIPE_LADDER(PIPES, WorkStep.PIPES, "29 CFR 1926.651(c)(2)", Set.of("ladder")),
    MAIN(PIPES, WorkStep.PIPES, "", Set.of()),
    ROOF_LINE(PIPES, WorkStep.PIPES, "", Set.of("never-sanitary")),
    DOWNSPOUTS(PIPES, WorkStep.PIPES, "", Set.of()),
    OUTLET_UNDER(PIPES, WorkStep.PIPES, "", Set.of("outlet-under-ground")),
    OUTLET_GROUND(PIPES, WorkStep.PIPES, "", Set.of("outlet-ground-unmeasured")),
    OUTLET(PIPES, WorkStep.PIPES, "", Set.of("outlet-guard", "outlet-freezing")),
    STORM(PIPES, WorkStep.PIPES, "", Set.of()),
    SUMP(PIPES, WorkStep.PIPES, "IRC P3303.1.2", Set.of("sump", "sump-riser")),
    DISCHARGE(PIPES, WorkStep.PIPES, "", Set.of("outlet-freezing")),
    LEAD(PIPES, WorkStep.DRAIN, "", Set.of()),
    CLEANOUTS(PIPES, WorkStep.DRAIN, "", Set.of()),
    HOLD_3(PIPES, WorkStep.DRAIN, "", Set.of()),
    ROOF_OVER(PIPES, WorkStep.BACKFILL, "", Set.of("never-sanitary")),
    FILL_PIPES(PIPES, WorkStep.BACKFILL, "", Set.of()),
    IMPORT(PIPES, WorkStep.RESTORE, "", Set.of()),
    REGRADE(PIPES, WorkStep.RESTORE, "IRC R401.3, R404.1.6", Set.of("siding-clearance")),
    HAUL(PIPES, WorkStep.RESTORE, "", Set.of()),
    CONCRETE_BACK(PIPES, WorkStep.RESTORE, "", Set.of()),
    TOPSOIL(PIPES, WorkStep.RESTORE, "", Set.of()),
    PLANTS_BACK(PIPES, WorkStep.RESTORE, "", Set.of()),
    SEED(PIPES, WorkStep.RESTORE, "", Set.of()),
    SOD(PIPES, WorkStep.RESTORE, "", Set.of()),
    PHOTOS(PIPES, WorkStep.CLEAN_UP, "", Set.of()),
    CLEAN_UP(PIPES, WorkStep.CLEAN_UP, "", Set.of()),

    /** A line that was put in by hand and that no other step does; it stands with the steps of its time. */
    ITEM(PIPES, WorkStep.CLEAN_UP, "", Set.of());

    private final StepPage page;
    private final WorkStep when;
    private final String rule;
    private final Set<String> carries;

    StepKind(StepPage page, WorkStep when, String rule, Set<String> carries) {
        this.page = page;
        this.when = when;
        this.rule = rule;
        this.carries = carries;
    }

    public StepPage page() {
        return page;
    }

    /** When in the work it is done. */
    public WorkStep when() {
        return when;
    }

    /** The rule that asks for it; empty where the trade does. */
    public String rule() {
        return rule;
    }

    /** Findings whose duty the step says in full, so that no note repeats it. */
    public Set<String> carries() {
        return carries;
    }

    /** The hold point that the step is, 1 to 3; 0 for a plain step. */
    public int hold() {
        return switch (this) {
            case HOLD_1 -> 1;
            case HOLD_2 -> 2;
            case HOLD_3 -> 3;
            default -> 0;
        };
    }

    /** As the words call it. */
    String key() {
        return "scope." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
