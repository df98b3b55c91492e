// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.util.List;
import spadework.company.Backfill;
import spadework.job.Texture;
import spadework.measure.Percent;

/**
 * How a group of soils changes volume.
 *
 * @param swell bank to loose, on bank volume
 * @param shrink bank to compacted, on bank volume
 */
public record EarthFactor(String group, List<Texture> textures, Percent swell, Percent shrink, Source source) {

    public EarthFactor {
        textures = List.copyOf(textures);
    }

    /** The same soil, filled as the company fills it. */
    EarthFactor filledBy(Backfill own) {
        return new EarthFactor(
                group,
                textures,
                swell,
                own.shrink(),
                new Source(source.text() + ". Shrink in its place: " + own.source() + " (company)", source.on()));
    }
}
