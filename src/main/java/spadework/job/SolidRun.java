// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import spadework.measure.Length;

/**
 * A solid pipe in a trench of its own: the main of the footing drain or a line of roof water.
 *
 * @param into label of the outlet
 * @param startInvert level of the pipe's inside bottom where its water comes in
 * @param endInvert the same where its water leaves
 * @param startGrade level of the ground over the start, as it will be
 * @param endGrade the same over the end
 * @param beside the wall in whose trench it begins; empty where it begins in the open, or a main at its drain's tee
 */
@RecordBuilder
public record SolidRun(
        String label,
        Length length,
        Optional<String> item,
        TrenchSize trench,
        int bends,
        String into,
        Optional<Length> startInvert,
        Optional<Length> endInvert,
        Optional<Length> startGrade,
        Optional<Length> endGrade,
        Optional<BesideWall> beside)
        implements SolidRunBuilder.With {}
