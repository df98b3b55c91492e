// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import com.fasterxml.jackson.core.JsonFactory;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.warranty.Warranties;

/** A program of its own that issues certificates and prints each number when it is acknowledged. */
final class Issuer {
    static final String JOB = "2026-014";
    static final LocalDate DAY = LocalDate.of(2026, 4, 3);

    private static final int SIZE = 20_000;

    private Issuer() {}

    /** Starts one: how many threads, and how many certificates each. */
    static Process start(Path folder, int threads, int times) throws IOException {
        String classes = Stream.of(Issuer.class, Register.class, JsonFactory.class)
                .map(Issuer::place)
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx64m",
                        "-cp",
                        classes,
                        Issuer.class.getName(),
                        folder.toString(),
                        String.valueOf(threads),
                        String.valueOf(times))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    public static void main(String[] arguments) throws InterruptedException {
        Register register = Register.of(Path.of(arguments[0]));
        int times = Integer.parseInt(arguments[2]);
        List<Thread> threads = new ArrayList<>();
        for (int each = Integer.parseInt(arguments[1]); each > 0; each--) {
            threads.add(new Thread(() -> issue(register, times, System.out)));
        }
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
    }

    private static void issue(Register register, int times, PrintStream acknowledged) {
        try {
            for (int done = 0; done < times; done++) {
                Entry entry = register.issue(DocumentKind.CERTIFICATE, JOB, DAY, Issuer::made);
                acknowledged.println(entry.number().orElseThrow());
                acknowledged.flush();
            }
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static Issue made(DocumentNumber number, SealMark mark) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(number + "-warranty.pdf", document(number + "-warranty.pdf"));
        files.put(number + "-warranty.xlsx", document(number + "-warranty.xlsx"));
        return Issue.of(files, Warranties.of(number.text()));
    }

    /** The whole document of a name. */
    static byte[] document(String name) {
        return name.repeat(SIZE / name.length()).getBytes(StandardCharsets.US_ASCII);
    }

    private static String place(Class<?> of) {
        try {
            return Path.of(of.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
