// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A change order.
 *
 * @param number counted from 1
 * @param evidence what shows it, in words
 * @param photos files of the evidence, in the job's folder
 * @param alteration what is added and taken away
 * @param unitPrices what is charged by agreed unit prices; empty when the alteration is priced as the job was
 * @param days working days it adds; negative when it takes some away
 * @param decision empty while it is pending, and where it was declined without a paper
 */
public record Change(
        int number,
        String title,
        LocalDate issued,
        ChangeReason reason,
        String why,
        String evidence,
        List<Photo> photos,
        Alteration alteration,
        List<UnitCount> unitPrices,
        int days,
        ChangeState state,
        Optional<Decision> decision) {

    public Change {
        photos = List.copyOf(photos);
        unitPrices = List.copyOf(unitPrices);
    }

    /**
     * What is done: the alteration, and what is charged by unit prices alone. Somebody does that as well, so it takes
     * hours and costs money; a count that the alteration has as an item of its own is in it once.
     */
    public Alteration work() {
        List<ExtraItem> items = new ArrayList<>(alteration.items());
        unitPrices.stream()
                .filter(UnitCount::isWork)
                .filter(count -> alteration.items().stream()
                        .noneMatch(item -> item.code().equals(count.price())))
                .forEach(count -> items.add(count.item(title)));
        return alteration.withItems(items);
    }
}
