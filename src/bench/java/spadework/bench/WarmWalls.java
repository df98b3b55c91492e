// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.reply.TemplateFolder;

/**
 * What a warm price or check takes as walls grow many, in one process: jobs take turns, so that a busy machine bothers
 * all alike, and the median of the thread's own work counts.
 */
final class WarmWalls {
    private static final Office OFFICE = Office.with(TemplateFolder.NONE);

    private WarmWalls() {}

    /**
     * Prints a line for each job.
     *
     * @param jobs by the words they are called by
     */
    static void compare(Map<String, Path> jobs, int rounds) throws IOException {
        Map<String, List<Double>> price = new LinkedHashMap<>();
        Map<String, List<Double>> check = new LinkedHashMap<>();
        long findings = 0;
        for (int round = 0; round < rounds; round++) {
            for (Map.Entry<String, Path> job : jobs.entrySet()) {
                long start = work();
                ((Bid) OFFICE.bid(job.getValue())).quote().total();
                long priced = work();
                findings += ((Bid) OFFICE.bid(job.getValue())).findings().size();
                long checked = work();
                if (round >= rounds / 3) {
                    price.computeIfAbsent(job.getKey(), key -> new ArrayList<>())
                            .add((priced - start) / 1e6);
                    check.computeIfAbsent(job.getKey(), key -> new ArrayList<>())
                            .add((checked - priced) / 1e6);
                }
            }
        }
        System.out.println(findings + " findings");
        for (String job : jobs.keySet()) {
            System.out.println(String.format(
                    Locale.ROOT,
                    "%-10s price %7.2f ms  check %7.2f ms",
                    job,
                    median(price.get(job)),
                    median(check.get(job))));
        }
    }

    private static long work() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
