// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;

/** Soil type beside a foundation: 29 CFR 1926 Subpart P App. A (T-02, T-04, T-05, T-08). */
final class SoilRules implements Rule {
    private static final String APPENDIX_A = SoilClass.SOURCE;

    @Override
    public List<Finding> check(Facts facts) {
        Soil soil = facts.job().site().soil();
        List<Finding> found = new ArrayList<>(SoilClass.beside(soil.type()));
        if (soil.seepage() == Seepage.FREE && (soil.type() == SoilType.A || soil.type() == SoilType.B)) {
            found.add(stop(
                    "soil-seeps",
                    "",
                    APPENDIX_A + " (b), Type C (iii)",
                    "type",
                    soil.type().name()));
        }
        found.add(SoilClass.confirm(soil.type()));
        if (soil.texture() == Texture.UNKNOWN) {
            found.add(must("soil-texture-unknown", "", APPENDIX_A));
        }
        if (soil.seepage() == Seepage.UNKNOWN) {
            found.add(SoilClass.seepageUnknown());
        }
        return found;
    }
}
