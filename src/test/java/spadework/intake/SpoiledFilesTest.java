// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Fault;

/** However a file is spoiled, it is understood or refused with faults; reading never fails otherwise. */
class SpoiledFilesTest {
    private static final int CASES = Integer.getInteger("spadework.spoiled", 250);
    private static final String[] TOKENS = {
        "{", "}", "[", "]", ",", ":", "\"", "null", "true", "-1", "1e400", "\"\"", "\"-5 ft\"", "\"\\ud800\"", "\\", "0"
    };

    @TempDir
    Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {20260303, 811})
    void spoiledFilesAreUnderstoodOrRefused(long seed) throws IOException {
        SampleFiles.in(folder);
        Random random = new Random(seed);
        int refused = 0;
        int stillJson = 0;
        for (int i = 0; i < CASES; i++) {
            String name = i % 10 == 8 ? "company.json" : i % 10 == 9 ? "price-book.json" : "job.json";
            byte[] sound = SampleFiles.resource("full/" + name).getBytes(StandardCharsets.UTF_8);
            Files.write(folder.resolve(name), spoiled(sound, random));
            Reading reading = new Intake(SampleFiles.BUNDLED).read(folder);
            if (reading instanceof Refused refusal) {
                refused++;
                stillJson += refusal.faults().stream()
                                .anyMatch(fault -> !fault.place().pointer().isEmpty())
                        ? 1
                        : 0;
                assertThat(refusal.faults())
                        .as("seed %d case %d", seed, i)
                        .isNotEmpty()
                        .allSatisfy(SpoiledFilesTest::check);
            }
            Files.write(folder.resolve(name), sound);
        }
        System.out.println(
                "seed " + seed + ": " + refused + " of " + CASES + " refused, " + stillJson + " behind the syntax");
        assertThat(refused).isBetween(CASES / 2, CASES - 1);
        assertThat(stillJson).isGreaterThan(CASES / 20);
    }

    private static void check(Fault fault) {
        // The schema's address may be quoted from the file; a class name may not.
        assertThat(fault.text().replace("spadework.example.com", ""))
                .doesNotContain("\n", "Exception", "spadework.", "null; fix");
        assertThat(fault.found()).isNotBlank();
        assertThat(fault.allowed()).isNotBlank();
        assertThat(fault.fix()).isNotBlank();
        assertThat(fault.place().file()).isNotBlank();
    }

    private static byte[] spoiled(byte[] sound, Random random) {
        byte[] bytes = sound;
        for (int i = 0; i <= random.nextInt(3); i++) {
            bytes = switch (random.nextInt(5)) {
                case 0 -> flipped(bytes, random);
                case 1 -> without(bytes, random);
                case 2 -> doubled(bytes, random);
                case 3 -> swapped(bytes, random);
                default -> withToken(bytes, random);
            };
        }
        return bytes;
    }

    private static byte[] flipped(byte[] bytes, Random random) {
        byte[] flipped = bytes.clone();
        flipped[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        return flipped;
    }

    private static byte[] without(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length);
        int length = 1 + random.nextInt(Math.min(40, bytes.length - at));
        return joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, at + length, bytes.length));
    }

    private static byte[] doubled(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length);
        int end = Math.min(bytes.length, at + 1 + random.nextInt(200));
        return joined(Arrays.copyOf(bytes, end), Arrays.copyOfRange(bytes, at, bytes.length));
    }

    /** Two quoted texts of the file change places. */
    private static byte[] swapped(byte[] bytes, Random random) {
        String[] parts = new String(bytes, StandardCharsets.ISO_8859_1).split("\"", -1);
        int one = 1 + 2 * random.nextInt(parts.length / 2);
        int other = 1 + 2 * random.nextInt(parts.length / 2);
        String kept = parts[one];
        parts[one] = parts[other];
        parts[other] = kept;
        return String.join("\"", parts).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** A value of the file gives way to a token. */
    private static byte[] withToken(byte[] bytes, Random random) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int colon = text.indexOf(": ", random.nextInt(text.length()));
        int start = Math.max(colon, 0) + 2;
        int end = Math.max(start, text.indexOf(random.nextBoolean() ? "," : "\n", start));
        String token = TOKENS[random.nextInt(TOKENS.length)];
        return (text.substring(0, start) + token + text.substring(end)).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] joined = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, joined, one.length, other.length);
        return joined;
    }
}
