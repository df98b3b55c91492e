// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Downspout;
import spadework.job.ExtraItem;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.NewFinish;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.TakenAway;
import spadework.job.Wall;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricebook.Assembly;

/** What an option or a change order does to a job, in the words of the other papers. */
public final class AlteredWorks {
    private final Dossier before;
    private final Dossier after;
    private final Alteration alteration;
    private final PaperWords terms;

    private AlteredWorks(Dossier before, Alteration alteration) {
        this.before = before;
        this.after = before.about(Altered.of(before.job(), alteration));
        this.alteration = alteration;
        this.terms = before.terms();
    }

    /**
     * The altered work in words.
     *
     * @param before the papers of the job that is altered
     */
    public static AlteredWork of(Dossier before, Alteration alteration) {
        return new AlteredWorks(before, alteration).work();
    }

    private AlteredWork work() {
        List<WallWork> walls = new WallWorks(after).all();
        PipeWorks runs = new PipeWorks(after);
        Set<String> added = labels(alteration.walls().stream().map(Wall::label).toList());
        Set<String> refinished =
                labels(alteration.finishes().stream().map(NewFinish::wall).toList());
        Set<String> pipes =
                labels(alteration.drains().stream().map(FootingDrain::label).toList());
        pipes.addAll(alteration.mains().stream().map(SolidRun::label).toList());
        pipes.addAll(alteration.roofLines().stream().map(SolidRun::label).toList());
        Set<String> outlets =
                labels(alteration.outlets().stream().map(Outlet::label).toList());
        return new AlteredWork(
                walls.stream().filter(wall -> added.contains(wall.label())).toList(),
                walls.stream()
                        .filter(wall -> refinished.contains(wall.label()) && !added.contains(wall.label()))
                        .toList(),
                runs.all().stream().filter(run -> pipes.contains(run.label())).toList(),
                runs.outlets().stream()
                        .filter(outlet -> outlets.contains(outlet.label()))
                        .toList(),
                things(),
                takenAway());
    }

    private List<String> things() {
        List<String> things = new ArrayList<>();
        for (Downspout spout : alteration.downspouts()) {
            things.add(terms.get("adds.downspout", "label", spout.label(), "into", spout.into()));
        }
        for (ExtraItem item : alteration.items()) {
            things.add(
                    item.quantity().isPresent()
                            ? terms.get(
                                    "adds.item",
                                    "quantity",
                                    Figures.counted(item.quantity().get(), unit(item.code())),
                                    "name",
                                    name(item.code()),
                                    "reason",
                                    item.reason())
                            : terms.get("adds.assembly", "name", name(item.code()), "reason", item.reason()));
        }
        return things;
    }

    private String name(String code) {
        return terms.own(before.book()
                .findAssembly(code)
                .map(Assembly::name)
                .orElseGet(() -> before.book().get(code).name()));
    }

    private Unit unit(String code) {
        return before.book()
                .findAssembly(code)
                .map(assembly -> assembly.driver().unit())
                .orElseGet(() -> before.book().get(code).unit());
    }

    private List<String> takenAway() {
        TakenAway gone = alteration.takenAway();
        Job job = before.job();
        List<String> things = new ArrayList<>();
        for (String label : gone.walls()) {
            Wall wall = job.getWall(label);
            things.add(terms.get(
                    "takes-away.wall",
                    "label",
                    label,
                    "where",
                    wall.where(),
                    "length",
                    wall.length().text()));
        }
        new PipeWorks(before)
                .all().stream()
                        .filter(run -> gone.pipes().contains(run.label()))
                        .forEach(run -> things.add(terms.get(
                                "takes-away." + PaperWords.key(run.kind()),
                                "label",
                                run.label(),
                                "length",
                                run.length())));
        gone.downspouts().forEach(label -> things.add(terms.get("takes-away.downspout", "label", label)));
        job.water().outlets().stream()
                .filter(outlet -> gone.outlets().contains(outlet.label()))
                .forEach(outlet ->
                        things.add(terms.get("takes-away.outlet", "label", outlet.label(), "what", outlet.what())));
        gone.items().forEach(code -> things.add(name(code)));
        return things;
    }

    private static Set<String> labels(Collection<String> labels) {
        return new HashSet<>(labels);
    }
}
