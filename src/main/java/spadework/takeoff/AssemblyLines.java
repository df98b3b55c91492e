// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Figures;
import spadework.pricebook.Assembly;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** From an assembly that a job names to its line items: each takes its share of what is counted of the driver. */
public final class AssemblyLines {
    private AssemblyLines() {}

    /** One line for each item, in the order of the book. */
    static List<TakeoffLine> of(Job job, PriceBook book, ExtraItem extra, Assembly assembly, TakeoffSection section) {
        List<Wall> walls = job.walls().stream()
                .filter(one -> one.label().equals(section.label()))
                .findFirst()
                .map(List::of)
                .orElse(job.walls());
        Working driver = extra.quantity()
                .<Working>map(stated -> new Given(
                        "d",
                        Drivers.name(assembly.driver()),
                        stated,
                        assembly.driver().unit(),
                        "/items/" + job.items().indexOf(extra) + "/quantity"))
                .orElseGet(() -> Drivers.count(assembly.driver(), job, walls));
        NamedAssembly named = new NamedAssembly(assembly, driver, extra.reason());
        List<Stretch> stretches = Conditions.in(job, section);
        return assembly.parts().stream()
                .map(part -> line(book, named, part, section, stretches))
                .toList();
    }

    /** An assembly as a job names it: why, and for how many of its driver. */
    private record NamedAssembly(Assembly assembly, Working driver, String reason) {}

    private static TakeoffLine line(
            PriceBook book, NamedAssembly named, Assembly.Part part, TakeoffSection section, List<Stretch> stretches) {
        Assembly assembly = named.assembly();
        Working driver = named.driver();
        LineItem item = book.get(part.item());
        Listed each = new Listed(
                "a",
                item.name() + " for each " + Drivers.name(assembly.driver()),
                part.each(),
                item.unit(),
                Sources.of(book) + ", assembly " + assembly.code());
        Worked working = Worked.of(
                "n",
                item.name(),
                driver.value().multiply(part.each()),
                item.unit(),
                new Formula("d × a", "assembly " + assembly.code() + " of the price book"),
                driver,
                each);
        BigDecimal quantity = Figures.printed(working.value(), item.unit());
        return new TakeoffLine(
                item.code(),
                section,
                quantity,
                item.unit(),
                Optional.empty(),
                stretches,
                item.material().map(material -> NetMaterial.of(book, item, quantity)),
                item.material().map(Material::waste),
                assembly.name() + ": " + named.reason(),
                Optional.of(working));
    }
}
