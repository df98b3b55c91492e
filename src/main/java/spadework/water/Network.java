// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.pricebook.PriceBook;

/** All pipes of a job, upstream ones first: drains, mains, roof lines, then the discharge pipes of sumps. */
public record Network(List<Reach> reaches) {

    public Network {
        reaches = List.copyOf(reaches);
    }

    /** Lays out a job's pipes with the book's sizes and adds up what flows in them. */
    public static Network of(Job job, PriceBook book) {
        Inflows inflows = new Inflows(job);
        List<Reach> reaches = new ArrayList<>();
        for (Course course : courses(job, book)) {
            reaches.add(Loading.of(course, inflows, new Network(reaches)));
        }
        return new Network(reaches);
    }

    private static List<Course> courses(Job job, PriceBook book) {
        List<Course> courses = new ArrayList<>();
        job.water().drains().forEach(drain -> courses.addAll(DrainCourses.of(job, book, drain)));
        job.water().mains().forEach(main -> courses.add(SolidCourses.main(job, book, main)));
        job.water().roofLines().forEach(line -> courses.add(SolidCourses.roofLine(job, book, line)));
        job.water()
                .outlets()
                .forEach(outlet -> outlet.discharge()
                        .filter(length -> length.isPositive() && outlet.kind() == OutletKind.SUMP)
                        .ifPresent(length -> courses.add(SolidCourses.discharge(job, book, outlet, length))));
        return courses;
    }

    /** The reaches of one run of the job. */
    public List<Reach> ofRun(String label) {
        return reaches.stream().filter(reach -> reach.run().equals(label)).toList();
    }

    /** The reaches whose water runs straight into that run or outlet. */
    public List<Reach> into(String label) {
        return reaches.stream().filter(reach -> reach.into().equals(label)).toList();
    }

    /** All that comes to a run or outlet from the reaches above it, in gpm; empty where a part is not known. */
    public Optional<Range> arriving(String label) {
        List<Reach> above = into(label);
        return above.stream().allMatch(reach -> reach.flow().inflow().isPresent())
                ? Optional.of(Range.sum(
                        "Q",
                        "arrives at " + label,
                        above.stream()
                                .map(reach -> reach.flow().inflow().orElseThrow())
                                .toList()))
                : Optional.empty();
    }
}
