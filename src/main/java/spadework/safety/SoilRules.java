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
    private static final String APPENDIX_A = "29 CFR 1926 Subpart P App. A";

    @Override
    public List<Finding> check(Facts facts) {
        Soil soil = facts.job().site().soil();
        List<Finding> found = new ArrayList<>();
        if (soil.type() == SoilType.A) {
            found.add(stop("soil-type-a", "", APPENDIX_A + " (b), Type A (iii)"));
        }
        if (soil.type() == SoilType.STABLE_ROCK) {
            found.add(stop("soil-rock-beside-footing", "", APPENDIX_A + " (b)"));
        }
        if (soil.seepage() == Seepage.FREE && (soil.type() == SoilType.A || soil.type() == SoilType.B)) {
            found.add(stop("soil-seeps", "", APPENDIX_A + " (b), Type C (iii)", "type", soil.type().name()));
        }
        if (soil.type() == SoilType.NOT_CLASSED) {
            found.add(must("soil-not-classed", "", APPENDIX_A + "; 29 CFR 1926.652(b)(1)"));
        } else {
            found.add(must("soil-class-confirm", "", APPENDIX_A, "type", soil.type().name()));
        }
        if (soil.texture() == Texture.UNKNOWN) {
            found.add(must("soil-texture-unknown", "", APPENDIX_A));
        }
        if (soil.seepage() == Seepage.UNKNOWN) {
            found.add(must("seepage-unknown", "", APPENDIX_A));
        }
        return found;
    }
}
