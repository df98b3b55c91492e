// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import spadework.job.Wall;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.work.WallWork;

/** Lays the steps of a job out on their pages and numbers them through. */
final class StepPlan {
    /** Advice that somebody in the trench acts on. All other advice is about the design and stays with the office. */
    private static final Set<String> FOR_THE_TRENCH = Set.of("air-test", "outlet-freezing", "well-drained");

    /** What the office has to price or to write into the job before the crew comes. */
    private static final Set<String> FOR_THE_OFFICE = Set.of(
            "trench-depth-differs",
            "trench-depth-usual",
            "main-shorter-than-way",
            "main-shorter-other-end-fits",
            "roof-line-shorter-than-way",
            "discharge-shorter-than-way",
            "hand-item-missing",
            "slope-unmarked",
            "sump-discharge-trench",
            "sump-lead",
            "sump-pump-fits",
            "sump-pump-curve",
            "sump-pump-unknown");

    private StepPlan() {}

    /** @param notes findings for the crew */
    static ScopeSteps of(Dossier dossier, List<WallWork> walls, List<FindingNote> notes) {
        StepLines lines = new StepLines(dossier);
        Numbers numbers = new Numbers();
        List<ScopeStep> before = numbers.through(CoverSteps.of(dossier, lines, notes));
        List<WallSteps> pages = new ArrayList<>();
        for (WallWork wall : walls) {
            List<ScopeStep> steps = numbers.through(
                    new WallPage(dossier, lines, wall).steps(isAbout(notes, "lead-paint", wall.label())));
            pages.add(new WallSteps(wall.label(), steps, List.of()));
        }
        return new ScopeSteps(before, pages, numbers.through(new PipePage(dossier, lines).steps()));
    }

    private static boolean isAbout(List<FindingNote> notes, String id, String wall) {
        return notes.stream()
                .anyMatch(note -> note.id().equals(id) && note.labels().contains(wall));
    }

    /** The notes that no step says and that are acted on in the trench. */
    static List<FindingNote> unsaid(ScopeSteps steps, List<FindingNote> notes) {
        Set<String> said = steps.all().stream()
                .flatMap(step -> step.kind().carries().stream())
                .collect(Collectors.toSet());
        return notes.stream()
                .filter(note -> note.severity().equals("stop")
                        || (!said.contains(note.id()) && !FOR_THE_OFFICE.contains(note.id())))
                .filter(note -> !note.severity().equals("advise") || FOR_THE_TRENCH.contains(note.id()))
                .toList();
    }

    /** The same steps with each note that is about walls alone on the page of each of them. */
    static ScopeSteps withNotes(ScopeSteps steps, List<FindingNote> notes) {
        List<WallSteps> walls = steps.walls().stream()
                .map(wall -> new WallSteps(
                        wall.label(),
                        wall.steps(),
                        notes.stream()
                                .filter(note -> note.labels().contains(wall.label()))
                                .toList()))
                .toList();
        return new ScopeSteps(steps.before(), walls, steps.pipes());
    }

    /** Whether a note is about walls and nothing else. */
    static boolean isOfWalls(FindingNote note, List<Wall> walls) {
        Set<String> labels = walls.stream().map(Wall::label).collect(Collectors.toSet());
        return !note.about().isEmpty() && labels.containsAll(note.labels());
    }

    /** Counts on from page to page. */
    private static final class Numbers {
        private int last;

        List<ScopeStep> through(List<ScopeStep> steps) {
            return steps.stream().map(step -> step.numbered(++last)).toList();
        }
    }
}
