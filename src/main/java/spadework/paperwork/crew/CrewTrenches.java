// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import spadework.job.LimitKind;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.MarkedLines;
import spadework.paperwork.work.DigWork;
import spadework.paperwork.work.DigWorks;
import spadework.paperwork.work.FinishWork;
import spadework.paperwork.work.TrenchWork;
import spadework.paperwork.work.WallWork;
import spadework.paperwork.work.WallWorks;
import spadework.trench.Bank;
import spadework.trench.SpoilRoom;
import spadework.trench.TrenchLimits;
import spadework.wording.Language;
import spadework.wording.Wording;

/** The trenches and holes of a job as the crew finds them on its sheet. */
final class CrewTrenches {
    private static final Wording WORDS = Wording.beside(CrewTrenches.class);

    private final Dossier dossier;
    private final Language language;

    CrewTrenches(Dossier dossier, Language language) {
        this.dossier = dossier;
        this.language = language;
    }

    /** At the walls first, then those of pipes and pits. */
    List<CrewTrench> all() {
        return Stream.concat(
                        new WallWorks(dossier).all().stream().map(this::wall),
                        DigWorks.of(dossier.job()).stream().map(this::dig))
                .toList();
    }

    private CrewTrench wall(WallWork wall) {
        TrenchWork trench = wall.trench();
        Wall measured = dossier.job().getWall(wall.label());
        String deep = WORDS.in(language)
                .get("wall." + (trench.hand() ? "by-hand" : "dug"), trench.depth(), trench.bottomWidth());
        return new CrewTrench(
                wall.label(),
                wall.where(),
                wall.length(),
                deep + ladder(TrenchLimits.needsWayOut(measured.deepestTrench())),
                bank(trench.protection(), trench.slope()),
                finish(wall.finish()),
                beside(measured));
    }

    private CrewTrench dig(DigWork dig) {
        String deep =
                WORDS.in(language).get(dig.length().isEmpty() ? "wall.pit" : "wall.dug", dig.depth(), dig.width());
        String bank = dig.deep() && dig.protection().equals("upright") ? "not-yet" : dig.protection();
        return new CrewTrench(
                dig.label(),
                WORDS.in(language).get("dig." + dig.kind()),
                dig.length(),
                deep + ladder(dig.wayOut()),
                bank(bank, dig.slope()),
                "",
                besides(dig));
    }

    private List<String> besides(DigWork dig) {
        return Stream.concat(
                        Stream.concat(lines(dig.label()).stream(), undug(dig.label())),
                        dig.kind().equals("roof-line") ? downspouts(dig.label()).stream() : Stream.<String>empty())
                .toList();
    }

    /** A wall of the house that is not dug up and that its bank would run under. */
    private Stream<String> undug(String label) {
        boolean near = dossier.findings().site().stream()
                .anyMatch(finding ->
                        finding.id().startsWith("pipe-bank-") && finding.about().equals(label));
        return near ? Stream.of(WORDS.in(language).get("beside.undug-wall")) : Stream.empty();
    }

    /** Marked lines from another wall that the trench comes near. */
    private List<String> lines(String label) {
        return MarkedLines.of(dossier).stream()
                .filter(line -> line.near().contains(label))
                .map(line -> WORDS.in(language).get("beside.marked-line", line.distance(), line.wall()))
                .toList();
    }

    /** An upright bank ends where the law asks for protection. */
    private String bank(String protection, String slope) {
        return WORDS.in(language).get("bank." + protection, slope, Bank.PROTECTED_FROM.text());
    }

    /** No job says where a downspout stands, so it is written in. */
    private List<String> downspouts(String line) {
        return dossier.job().water().downspouts().stream()
                .filter(spout -> spout.into().equals(line))
                .map(spout -> WORDS.in(language).get("beside.downspout", spout.label()))
                .toList();
    }

    private String ladder(boolean due) {
        return due ? WORDS.in(language).get("wall.ladder") : "";
    }

    /** What stands beside the wall, and where its soil cannot lie. */
    private List<String> beside(Wall wall) {
        Site site = dossier.job().site();
        List<String> beside = new ArrayList<>();
        for (SiteLimit limit : site.limits()) {
            if (limit.wall().equals(wall.label())) {
                String note = limit.note().isEmpty() ? "" : " (" + limit.note() + ")";
                beside.add(WORDS.in(language)
                                .get(
                                        "beside." + PaperWords.key(limit.kind().name()),
                                        limit.distance().text())
                        + note);
            }
        }
        beside.addAll(lines(wall.label()));
        SpoilRoom.inTheWay(site, wall)
                .map(limit -> limit.kind() == LimitKind.UTILITY ? "utility" : "none")
                .ifPresent(where -> beside.add(WORDS.in(language).get("spoil." + where)));
        return beside;
    }

    private String finish(FinishWork finish) {
        return finish.wetFilm().isEmpty()
                ? WORDS.in(language).get("finish." + finish.system(), finish.material())
                : WORDS.in(language)
                        .get(
                                finish.coats() == 1 ? "finish." + "coat" : "finish." + "coats",
                                finish.wetFilm(),
                                finish.coats());
    }
}
