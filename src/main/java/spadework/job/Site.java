// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import spadework.measure.Length;

/**
 * The house and its ground.
 *
 * @param benchmark what the levels are measured from, in words
 * @param insideFloor level of the floor inside
 * @param locateTicket the utility locate request, once there is one
 * @param testPits holes dug to look at ground or footing
 */
@RecordBuilder
public record Site(
        Address address,
        Optional<Integer> yearBuilt,
        Space space,
        House house,
        Optional<String> benchmark,
        Optional<Length> insideFloor,
        Soil soil,
        Optional<Rain> rain,
        List<SiteLimit> limits,
        Optional<LocateTicket> locateTicket,
        Optional<Catchment> catchment,
        List<TestPit> testPits)
        implements SiteBuilder.With {

    public Site {
        limits = List.copyOf(limits);
        testPits = List.copyOf(testPits);
    }

    /** The same site with the locate ticket of another, or without one as it is. */
    Site withTicketOf(Site other) {
        return withLocateTicket(other.locateTicket);
    }

    Site withoutTicket() {
        return withLocateTicket(Optional.empty());
    }
}
