// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spadework.finding.Fault;
import spadework.intake.source.Excerpt;
import spadework.intake.source.SourceFile;
import spadework.intake.value.Names;
import spadework.job.Agreed;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Change;
import spadework.job.Corner;
import spadework.job.Downspout;
import spadework.job.ExtraItem;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.NewFinish;
import spadework.job.Option;
import spadework.job.Outlet;
import spadework.job.Restoration;
import spadework.job.SolidRun;
import spadework.job.TakenAway;
import spadework.job.Wall;

/** An option or a change order leaves a job that fits together, and takes away only what is there. */
public final class AlterationChecks {
    private final SourceFile sheet;

    private AlterationChecks(SourceFile sheet) {
        this.sheet = sheet;
    }

    static void check(Job job, SourceFile sheet) {
        if (!sheet.faults().isEmpty()) {
            // What an alteration leads to can only be seen in a job that is itself without fault.
            return;
        }
        AlterationChecks checks = new AlterationChecks(sheet);
        for (int i = 0; i < job.agreement().options().size(); i++) {
            Option option = job.agreement().options().get(i);
            checks.alteration("/options/" + i, job, option.alteration());
        }
        for (int i = 0; i < job.agreement().changes().size() && sheet.faults().isEmpty(); i++) {
            Change change = job.agreement().changes().get(i);
            Job before = Agreed.before(job, change.number());
            checks.alteration("/changes/" + i, before, change.alteration());
            checks.places("/changes/" + i, Altered.of(before, change.alteration()), change);
        }
    }

    private void alteration(String pointer, Job before, Alteration alteration) {
        int faults = sheet.faults().size();
        takenAway(pointer + "/takesAway", before, alteration.takenAway());
        finishes(pointer + "/adds/finishes", before, alteration.finishes());
        if (sheet.faults().size() == faults) {
            whole(pointer, Altered.of(before, alteration));
        }
    }

    /** What is charged by a unit price at a wall needs that wall. */
    private void places(String pointer, Job altered, Change change) {
        Set<String> walls = labels(altered.walls().stream().map(Wall::label).toList());
        for (int i = 0; i < change.unitPrices().size(); i++) {
            String place = pointer + "/unitPrices/" + i + "/wall";
            change.unitPrices().get(i).wall().ifPresent(label -> name(place, label, walls, "a wall"));
        }
    }

    /** Runs the checks of a job over the altered one, on a sheet of its own. */
    private void whole(String pointer, Job altered) {
        SourceFile scratch = new SourceFile(sheet.file());
        JobChecks.structure(altered, scratch);
        for (Fault fault : scratch.faults()) {
            sheet.fault(
                    pointer,
                    fault.found() + " at " + fault.place().pointer() + " of the job that comes of this",
                    fault.allowed(),
                    fault.fix());
        }
    }

    private void takenAway(String pointer, Job before, TakenAway gone) {
        each(
                pointer + "/walls",
                gone.walls(),
                labels(before.walls().stream().map(Wall::label).toList()),
                "a wall");
        Set<String> pipes =
                labels(before.water().drains().stream().map(FootingDrain::label).toList());
        pipes.addAll(before.water().mains().stream().map(SolidRun::label).toList());
        pipes.addAll(before.water().roofLines().stream().map(SolidRun::label).toList());
        each(pointer + "/pipes", gone.pipes(), pipes, "a drain, a main or a roof line");
        each(
                pointer + "/downspouts",
                gone.downspouts(),
                labels(before.water().downspouts().stream()
                        .map(Downspout::label)
                        .toList()),
                "a downspout");
        each(
                pointer + "/outlets",
                gone.outlets(),
                labels(before.water().outlets().stream().map(Outlet::label).toList()),
                "an outlet");
        each(
                pointer + "/items",
                gone.items(),
                labels(before.items().stream().map(ExtraItem::code).toList()),
                "a line item put in by hand");
        gone.restoration().ifPresent(less -> restoration(pointer + "/restoration", before.restoration(), less));
    }

    private void restoration(String pointer, Restoration now, Restoration less) {
        boolean more = less.regrade().compareTo(now.regrade()) > 0
                || less.topsoil().squareFeet() > now.topsoil().squareFeet()
                || less.seed().squareFeet() > now.seed().squareFeet()
                || less.sod().squareFeet() > now.sod().squareFeet()
                || less.concrete().squareFeet() > now.concrete().squareFeet()
                || less.plants() > now.plants();
        if (more) {
            sheet.fault(pointer, "more than the job has", "at most the job's own restoration", "take less away");
        }
    }

    private void finishes(String pointer, Job before, List<NewFinish> finishes) {
        Set<String> walls = labels(before.walls().stream().map(Wall::label).toList());
        for (int i = 0; i < finishes.size(); i++) {
            name(pointer + "/" + i + "/wall", finishes.get(i).wall(), walls, "a wall");
        }
    }

    private void each(String pointer, List<String> names, Set<String> known, String what) {
        for (int i = 0; i < names.size(); i++) {
            name(pointer + "/" + i, names.get(i), known, what);
        }
    }

    private void name(String pointer, String name, Set<String> known, String what) {
        new Names(what + " that the job has here", known, true).check(sheet, pointer, name, Excerpt.quoted(name));
    }

    private static Set<String> labels(List<String> labels) {
        return new HashSet<>(labels);
    }

    /** What an alteration touches, for telling whether two can both be taken. */
    static Set<String> touched(Alteration alteration) {
        List<String> touched = new ArrayList<>();
        alteration.walls().forEach(wall -> touched.add(wall.label()));
        alteration.finishes().forEach(finish -> touched.add(finish.wall()));
        alteration.drains().forEach(drain -> touched.add(drain.label()));
        alteration.mains().forEach(run -> touched.add(run.label()));
        alteration.roofLines().forEach(run -> touched.add(run.label()));
        alteration.downspouts().forEach(spout -> touched.add(spout.label()));
        alteration.outlets().forEach(outlet -> touched.add(outlet.label()));
        touched.addAll(alteration.takenAway().walls());
        touched.addAll(alteration.takenAway().pipes());
        touched.addAll(alteration.takenAway().downspouts());
        touched.addAll(alteration.takenAway().outlets());
        alteration.takenAway().items().forEach(code -> touched.add("item " + code));
        for (Corner corner : alteration.corners()) {
            touched.add("corner " + corner.first());
            touched.add("corner " + corner.second());
        }
        return new HashSet<>(touched);
    }
}
