package spadework.pricebook;

import java.util.List;
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
}
