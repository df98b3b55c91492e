// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.List;
import java.util.regex.Pattern;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.WarrantyPart;
import spadework.pricebook.PriceBook;

/**
 * What a warranty promises of a wall follows what is put on it: a part whose name begins with "Waterproofed" or
 * "Dampproofed" is about those walls alone, and is left out where the job has none. Texts are read in any language that
 * papers are in. IRC R406.1, R406.2 (F-17, F-19) tell the two apart.
 */
public final class WarrantedWalls {
    private static final Pattern WATERPROOFED = starts("waterproofed|impermeabilizad[ao]s?");
    private static final Pattern DAMPPROOFED = starts("dampproofed|protegid[ao]s? contra la humedad");

    private final Job job;
    private final List<String> dampproofed;

    public WarrantedWalls(Job job, PriceBook book) {
        this.job = job;
        this.dampproofed = job.walls().stream()
                .filter(wall -> !WallFace.isWaterproofed(wall, book))
                .map(Wall::label)
                .toList();
    }

    /** The parts of the job's warranty that it has walls for; those about something else stay. */
    public List<WarrantyPart> parts() {
        return job.warranty().parts().stream().filter(this::concerns).toList();
    }

    /** The parts that no word ties to one kind of wall: what they say of walls they say of all. */
    public List<WarrantyPart> partsOfAllWalls() {
        return job.warranty().parts().stream()
                .filter(part -> !WATERPROOFED.matcher(part.part()).find()
                        && !DAMPPROOFED.matcher(part.part()).find())
                .toList();
    }

    /** Labels of the walls whose film does not earn the word waterproofing. */
    public List<String> dampproofed() {
        return dampproofed;
    }

    private boolean concerns(WarrantyPart part) {
        boolean noneProof = dampproofed.size() == job.walls().size();
        boolean nothingToWaterproof =
                noneProof && WATERPROOFED.matcher(part.part()).find();
        boolean nothingToDampproof =
                dampproofed.isEmpty() && DAMPPROOFED.matcher(part.part()).find();
        return !nothingToWaterproof && !nothingToDampproof;
    }

    private static Pattern starts(String word) {
        return Pattern.compile(
                "^(?:the |las? )?(?:pared(?:es)? )?(?:" + word + ")\\b",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
