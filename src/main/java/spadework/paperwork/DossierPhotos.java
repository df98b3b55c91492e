// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.util.List;
import java.util.Optional;

/**
 * The pictures that the papers show.
 *
 * @param logo the firm's logo as a data address
 * @param visit photos of the visit, in the job's order
 * @param work photos of change orders and hold points
 */
public record DossierPhotos(Optional<String> logo, List<Picture> visit, WorkPictures work) {

    /** None. */
    public static final DossierPhotos NONE = new DossierPhotos(Optional.empty(), List.of(), WorkPictures.NONE);

    public DossierPhotos {
        visit = List.copyOf(visit);
    }
}
