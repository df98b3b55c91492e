// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import spadework.intake.source.Excerpt;
import spadework.intake.source.SourceFile;
import spadework.intake.value.Names;
import spadework.job.BesideWall;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.Photo;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.pricebook.Section;

/** What a job refers to by label is there. */
public final class LabelReferences {
    private final SourceFile sheet;

    private LabelReferences(SourceFile sheet) {
        this.sheet = sheet;
    }

    static void check(Job job, SourceFile sheet) {
        LabelReferences references = new LabelReferences(sheet);
        Names walls = references.names("the label of a wall", "/walls", job.walls(), Wall::label);
        references.corners(job, walls);
        references.each("/site/limits", "/wall", job.site().limits(), limit -> limit.wall(), walls);
        references.testPits(job, walls);
        references.catchment(job, references.pipes(job.water(), walls));
        references.sections(job, walls);
        references.photos(job);
    }

    private void testPits(Job job, Names walls) {
        for (int i = 0; i < job.site().testPits().size(); i++) {
            String pointer = "/site/testPits/" + i + "/wall";
            if (sheet.isSound(pointer)) {
                job.site()
                        .testPits()
                        .get(i)
                        .wall()
                        .ifPresent(written -> walls.check(sheet, pointer, written, Excerpt.quoted(written)));
            }
        }
    }

    private void corners(Job job, Names walls) {
        each("/corners", "/first", job.corners(), corner -> corner.first().wall(), walls);
        each("/corners", "/second", job.corners(), corner -> corner.second().wall(), walls);
    }

    /**
     * A downspout may name any pipe: one that is no roof line is a stop, which a check tells with its reason. Where it
     * names none, roof lines alone are offered: a footing drain would be forbidden at once.
     */
    private Names pipes(Water water, Names walls) {
        Names mains = names("the label of a main", "/water/mains", water.mains(), SolidRun::label);
        Names roofLines = names("the label of a roof line", "/water/roofLines", water.roofLines(), SolidRun::label);
        Names outlets = names("the label of an outlet", "/water/outlets", water.outlets(), Outlet::label);
        for (int i = 0; i < water.drains().size(); i++) {
            each("/water/drains/" + i + "/along", "", water.drains().get(i).along(), label -> label, walls);
        }
        Names ends = either("the label of a main or an outlet", mains, outlets);
        each("/water/drains", "/into", water.drains(), FootingDrain::into, ends);
        each("/water/mains", "/into", water.mains(), SolidRun::into, outlets);
        each("/water/roofLines", "/into", water.roofLines(), SolidRun::into, outlets);
        besideWalls("/water/mains/", water.mains(), walls);
        besideWalls("/water/roofLines/", water.roofLines(), walls);
        Names drains = names("the label of a drain", "/water/drains", water.drains(), FootingDrain::label);
        Names pipes = either("the label of a pipe", roofLines, either("", mains, drains));
        for (int i = 0; i < water.downspouts().size(); i++) {
            String pointer = "/water/downspouts/" + i + "/into";
            String into = water.downspouts().get(i).into();
            if (sheet.isSound(pointer) && !pipes.holds(into)) {
                roofLines.check(sheet, pointer, into, Excerpt.quoted(into));
            }
        }
        return pipes;
    }

    private void besideWalls(String list, List<SolidRun> runs, Names walls) {
        for (int i = 0; i < runs.size(); i++) {
            String pointer = list + i + "/besideWall/wall";
            if (sheet.isSound(pointer)) {
                runs.get(i)
                        .beside()
                        .map(BesideWall::wall)
                        .ifPresent(written -> walls.check(sheet, pointer, written, Excerpt.quoted(written)));
            }
        }
    }

    private void catchment(Job job, Names pipes) {
        String pointer = "/site/catchment/into";
        if (job.site().catchment().isPresent() && sheet.isSound(pointer)) {
            String written = job.site().catchment().get().into();
            pipes.check(sheet, pointer, written, Excerpt.quoted(written));
        }
    }

    private void sections(Job job, Names walls) {
        String what = "the label of a wall, or a section";
        Names sections = either(what, walls, Names.of(what, Section.labelsBesideWalls()));
        each("/items", "/section", job.items(), item -> item.section(), sections);
    }

    private void photos(Job job) {
        Names files = names("a file of \"photos\"", "/photos", job.photos(), Photo::file, "/file");
        for (int i = 0; i < job.observations().size(); i++) {
            each("/observations/" + i + "/photos", "", job.observations().get(i).photos(), file -> file, files);
        }
    }

    private <T> void each(String list, String key, List<T> things, Function<T, String> name, Names names) {
        for (int i = 0; i < things.size(); i++) {
            String pointer = list + "/" + i + key;
            if (sheet.isSound(pointer)) {
                String written = name.apply(things.get(i));
                names.check(sheet, pointer, written, Excerpt.quoted(written));
            }
        }
    }

    private <T> Names names(String what, String list, List<T> things, Function<T, String> name) {
        return names(what, list, things, name, "/label");
    }

    private <T> Names names(String what, String list, List<T> things, Function<T, String> name, String key) {
        List<String> sound = new ArrayList<>();
        boolean complete = sheet.isWhole(list);
        for (int i = 0; i < things.size(); i++) {
            boolean known = sheet.isWhole(list + "/" + i + key);
            complete &= known;
            sound.add(known ? name.apply(things.get(i)) : "");
        }
        return new Names(what, new HashSet<>(sound), complete);
    }

    private static Names either(String what, Names one, Names other) {
        List<String> both = new ArrayList<>(one.known());
        both.addAll(other.known());
        return new Names(what, new HashSet<>(both), one.complete() && other.complete());
    }
}
