// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * What was seen at the visit.
 *
 * @param cause what we take it to come from
 * @param cure what the work does about it
 * @param photos file names of the photos that show it
 */
public record Observation(String seen, String evidence, String cause, String cure, List<String> photos) {

    public Observation {
        photos = List.copyOf(photos);
    }
}
