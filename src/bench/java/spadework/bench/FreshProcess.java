// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One run of a program in a process of its own.
 *
 * @param seconds from start to exit
 * @param cpuSeconds of all its threads; 0 where the system does not tell
 * @param peakMegabytes of memory held at once, as last seen before it ended; 0 where the system does not tell
 */
record FreshProcess(double seconds, double cpuSeconds, double peakMegabytes) {
    private static final double TICKS_A_SECOND = 100;

    /**
     * Runs the command and waits for it.
     *
     * @throws IllegalStateException if it does not exit with 0
     */
    static FreshProcess run(List<String> command, Path log) throws IOException, InterruptedException {
        double cpuBefore = cpuOfChildren();
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        double[] peak = new double[1];
        Thread watch = new Thread(() -> peak[0] = watch(process));
        watch.start();
        int exit = process.waitFor();
        double seconds = (System.nanoTime() - start) / 1e9;
        watch.join();
        if (exit != 0) {
            throw new IllegalStateException("the program ended with " + exit + ", see " + log);
        }
        return new FreshProcess(seconds, cpuOfChildren() - cpuBefore, peak[0]);
    }

    private static double watch(Process process) {
        Path status = Path.of("/proc", Long.toString(process.pid()), "status");
        double peak = 0;
        try {
            while (process.isAlive() && Files.exists(status)) {
                for (String line : Files.readAllLines(status)) {
                    if (line.startsWith("VmHWM:")) {
                        peak = Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024;
                    }
                }
                Thread.sleep(20);
            }
        } catch (IOException ended) {
            return peak;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return peak;
    }

    /** User and system time of all children that have ended. */
    private static double cpuOfChildren() throws IOException {
        Path stat = Path.of("/proc/self/stat");
        if (!Files.exists(stat)) {
            return 0;
        }
        String line = Files.readString(stat);
        String[] fields = line.substring(line.lastIndexOf(')') + 2).split(" ");
        return (Double.parseDouble(fields[13]) + Double.parseDouble(fields[14])) / TICKS_A_SECOND;
    }
}
