// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * What was seen at the house before it was priced.
 *
 * @param notFixed what the work does not fix, one thing a line
 */
public record Survey(List<Observation> observations, List<String> notFixed, List<Photo> photos) {

    public Survey {
        observations = List.copyOf(observations);
        notFixed = List.copyOf(notFixed);
        photos = List.copyOf(photos);
    }

    Survey withPhotos(List<Photo> others) {
        return new Survey(observations, notFixed, others);
    }
}
