// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Who has to sign: everyone whom the job names as an owner, in person or by somebody who has a right to. */
public final class Owners {
    private Owners() {}

    /** The owners for whom nobody among those who signed may sign. */
    public static List<String> missing(Job job, Collection<String> signed) {
        return job.customer().names().stream()
                .filter(owner -> signed.stream().noneMatch(name -> signsFor(job, name, owner)))
                .toList();
    }

    /** Those who signed and are neither an owner nor named with a right to sign for one. */
    public static List<String> strangers(Job job, Collection<String> signed) {
        return signed.stream()
                .filter(name -> job.customer().names().stream().noneMatch(owner -> signsFor(job, name, owner)))
                .toList();
    }

    /** Everybody who may sign, with the right of those who are no owners. */
    public static List<String> allowed(Job job) {
        List<String> all = new ArrayList<>(job.customer().names());
        signers(job).stream()
                .map(one -> one.name() + " (" + one.right().words() + " for " + one.owner() + ")")
                .forEach(all::add);
        return all;
    }

    /** Whether two names are of the same person: case and spaces do not count. */
    public static boolean isSame(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static boolean signsFor(Job job, String name, String owner) {
        return isSame(name, owner)
                || signers(job).stream().anyMatch(one -> isSame(one.name(), name) && isSame(one.owner(), owner));
    }

    private static List<Signer> signers(Job job) {
        return job.agreement().signing().map(Signing::signers).orElse(List.of());
    }

    private static String plain(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
