// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.finding.Finding;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.FinishSystem;
import spadework.job.FootingDrain;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.MarkedLine;
import spadework.paperwork.part.MarkedLines;
import spadework.paperwork.work.FallWords;
import spadework.paperwork.work.TrenchWork;
import spadework.paperwork.work.WallWork;
import spadework.pricebook.Measure;
import spadework.takeoff.Quantity;
import spadework.takeoff.wall.BackfillBracing;
import spadework.trench.SpoilRoom;

/** The steps at one wall, in the order in which the trade does them. */
final class WallPage {
    private final Dossier dossier;
    private final Wall wall;
    private final WallWork work;
    private final StepTexts texts;

    WallPage(Dossier dossier, StepLines lines, WallWork work) {
        this.dossier = dossier;
        this.wall = dossier.job().getWall(work.label());
        this.work = work;
        this.texts = new StepTexts(dossier, lines, work.label());
    }

    /** @param lead whether the old paint on the wall counts as lead */
    List<ScopeStep> steps(boolean lead) {
        look();
        ask();
        lines();
        dig();
        prepare(lead);
        cover();
        drain();
        backfill();
        return texts.with(StepPage.WALL);
    }

    /** What nobody measured or saw yet that sends a wall to an engineer first, each with a place for the answer. */
    private void look() {
        List<StepEvidence> open = dossier.findings().site().stream()
                .filter(finding -> StepKind.LOOK_FIRST.carries().contains(finding.id())
                        && finding.about().equals(wall.label()))
                .map(finding -> StepEvidence.figures(texts.text("scope.look-first." + finding.id()), 1))
                .toList();
        if (!open.isEmpty()) {
            texts.add(StepKind.LOOK_FIRST, "", open);
        }
    }

    /** What stands beside the trench and nobody asked after: a hold before the dig, with a place for each answer. */
    private void ask() {
        List<String> asked = dossier.findings().site().stream()
                .filter(finding -> StepKind.ASK_FIRST.carries().contains(finding.id())
                        && finding.about().equals(wall.label()))
                .map(Finding::id)
                .distinct()
                .toList();
        if (!asked.isEmpty()) {
            texts.add(
                    StepKind.ASK_FIRST,
                    "",
                    asked.stream()
                            .map(id -> StepEvidence.figures(texts.text("scope.ask-first." + id + ".blank"), 1))
                            .toList(),
                    "what",
                    asked.stream()
                            .map(id -> texts.text("scope.ask-first." + id))
                            .collect(Collectors.joining(" ")));
        }
    }

    /** Marked lines before the wall, and those round its corner that its trench comes near. */
    private void lines() {
        for (MarkedLine line : MarkedLines.at(dossier, wall.label())) {
            texts.add(
                    StepKind.LINE,
                    line.note().isEmpty() ? "" : ".noted",
                    List.of(),
                    "distance",
                    line.distance(),
                    "wall",
                    line.wall(),
                    "note",
                    line.note());
        }
    }

    private void dig() {
        TrenchWork trench = work.trench();
        texts.add(
                StepKind.DIG,
                "",
                List.of(StepEvidence.figures(texts.text("scope.depth-dug"), 2)),
                "length",
                work.length(),
                "width",
                trench.bottomWidth(),
                "depth",
                trench.depth());
        spoil();
        texts.add(StepKind.BANK, "." + trench.protection(), List.of(), "slope", trench.slope());
        texts.add(StepKind.INSPECT, "", List.of(), "type", soilType());
        if (wall.deepestTrench().compareTo(StepFigure.LADDER_FROM.length()) >= 0) {
            texts.add(StepKind.LADDER, "", List.of());
        }
        if (trench.hand()) {
            texts.add(StepKind.DIG_BY_HAND, ".all", List.of());
        } else {
            texts.sold(StepKind.DIG_BY_HAND, "", "share", trench.handShare());
        }
        texts.sold(StepKind.DEWATER, "");
    }

    private void spoil() {
        Optional<SiteLimit> limit = SpoilRoom.inTheWay(dossier.job().site(), wall);
        texts.add(
                StepKind.SPOIL,
                limit.map(one -> "." + PaperWords.key(one.kind().name())).orElse(""),
                List.of(),
                "distance",
                limit.map(one -> one.distance().text()).orElse(""));
    }

    private String soilType() {
        return dossier.terms().of("soiltype", dossier.job().site().soil().type());
    }

    private void prepare(boolean lead) {
        texts.sold(StepKind.WELLS_OUT, many(work.openings().windowWells()), "count", wells());
        if (lead || texts.isSold(StepKind.LEAD_SAFE)) {
            texts.add(StepKind.LEAD_SAFE, "", List.of());
        }
        texts.sold(StepKind.STRIP, "", "what", String.join("; ", work.surface().strip()));
        texts.sold(StepKind.SCRAPE, "");
        texts.sold(StepKind.WASH, "");
        texts.add(StepKind.HOLD_1, "", holding(StepEvidence.photo(texts.text("scope.photo.footing"))));
        texts.sold(StepKind.CRACKS, "", "cracks", work.surface().cracks());
        texts.sold(StepKind.COVE, "");
        if (work.surface().parge()) {
            texts.sold(StepKind.PARGE, "");
        }
        texts.sold(StepKind.DRY, system());
    }

    private void cover() {
        texts.add(
                StepKind.FINISH,
                system(),
                finishEvidence(),
                "material",
                work.finish().material(),
                "coats",
                coats(work.finish().coats()),
                "film",
                work.finish().wetFilm().isEmpty()
                        ? ""
                        : texts.text(
                                "scope.film",
                                "wet",
                                work.finish().wetFilm(),
                                "dry",
                                work.finish().dryFilm()));
        texts.add(StepKind.HOLD_2, system(), holding(StepEvidence.photo(texts.text("scope.photo.coat"))));
        texts.sold(StepKind.COVER_COATING, "");
    }

    private List<StepEvidence> finishEvidence() {
        List<StepEvidence> evidence = new ArrayList<>();
        if (wall.finish().system() == FinishSystem.COATING
                && !work.finish().wetFilm().isEmpty()) {
            int readings = (int) Math.max(
                    1,
                    Math.ceil(wall.length().feet()
                            / StepFigure.READING_EVERY.length().feet()));
            for (int coat = 1; coat <= work.finish().coats(); coat++) {
                evidence.add(
                        StepEvidence.figures(texts.text("scope.readings", "coat", Integer.toString(coat)), readings));
            }
        }
        gallons()
                .ifPresent(planned ->
                        evidence.add(StepEvidence.figures(texts.text("scope.gallons", "planned", planned), 1)));
        if (wall.finish().system() != FinishSystem.PARGE) {
            evidence.add(StepEvidence.figures(texts.text("scope.weather"), 2));
        }
        return evidence;
    }

    private Optional<String> gallons() {
        return dossier.takeoff().quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.COAT_GALLONS
                        && quantity.label().equals(wall.label()))
                .map((Quantity quantity) -> Figures.withUnit(quantity.printed(), quantity.unit()))
                .findFirst();
    }

    private void drain() {
        List<FootingDrain> drains = dossier.job().water().drains().stream()
                .filter(drain -> drain.along().contains(wall.label()))
                .toList();
        if (drains.isEmpty()) {
            return;
        }
        texts.sold(StepKind.FOOTING_WASH, "");
        bed(drains.get(0));
        String levels = drains.stream()
                .map(drain -> levels(drain))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        texts.sold(StepKind.PIPE, levels.isEmpty() ? ".set-on-site" : "", "levels", levels);
        texts.sold(StepKind.STONE, "");
        texts.sold(StepKind.FABRIC, "");
    }

    /** The levels of this wall's own stretch; those of the whole run stand with the pipes. */
    private String levels(FootingDrain drain) {
        String here = FallWords.at(dossier, drain, wall.label());
        return here.isEmpty() ? "" : drain.label() + ": " + here;
    }

    /** Stone up to where the pipe's levels want it; 2 in where they are not known. */
    private void bed(FootingDrain drain) {
        StoneProfile profile =
                StoneProfile.of(dossier.job(), dossier.book(), drain).get(wall.label());
        DoubleSummaryStatistics under =
                profile.stations().stream().mapToDouble(StoneStation::under).summaryStatistics();
        Length least = Length.ofFeet(under.getMin());
        Length most = Length.ofFeet(under.getMax());
        boolean even = least.text().equals(most.text());
        texts.sold(
                StepKind.BED,
                !profile.measured() ? "" : even ? ".level" : ".by-levels",
                "least",
                least.text(),
                "most",
                most.text());
    }

    private void backfill() {
        texts.sold(StepKind.WELLS_BACK, many(work.openings().windowWells()), "count", wells());
        texts.sold(StepKind.BACKFILL, BackfillBracing.isDue(wall) ? ".braced" : "");
    }

    private List<StepEvidence> holding(StepEvidence photo) {
        return List.of(
                photo,
                StepEvidence.initials(texts.text("scope.contractor")),
                StepEvidence.initials(texts.text("scope.homeowner")));
    }

    private String system() {
        return "." + PaperWords.key(wall.finish().system().name());
    }

    private String wells() {
        return Integer.toString(work.openings().windowWells());
    }

    private static String many(int count) {
        return count == 1 ? ".one" : "";
    }

    private String coats(int count) {
        return texts.text(count == 1 ? "scope.coat.one" : "scope.coats", "count", Integer.toString(count));
    }
}
