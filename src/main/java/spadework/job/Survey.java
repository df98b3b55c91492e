// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * What was seen at the house before it was priced.
 *
 * @param notFixed what the work does not fix, one thing a line
 */
@RecordBuilder
public record Survey(List<Observation> observations, List<String> notFixed, List<Photo> photos)
        implements SurveyBuilder.With {

    public Survey {
        observations = List.copyOf(observations);
        notFixed = List.copyOf(notFixed);
        photos = List.copyOf(photos);
    }
}
