package spadework.job;

import spadework.measure.Area;
import spadework.measure.Length;

/**
 * What is put back.
 *
 * @param regrade length of wall along which the soil is shaped to fall away
 * @param topsoil area that gets topsoil
 * @param topsoilDepth how deep
 * @param concrete area of walk or slab that is broken out and poured again
 * @param plants shrubs taken up and set back
 */
public record Restoration(
        Length regrade, Area topsoil, Length topsoilDepth, Area seed, Area sod, Area concrete, int plants) {}
