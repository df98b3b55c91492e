// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.warranty.Claim;
import spadework.warranty.ClaimStep;
import spadework.warranty.Warranty;

/**
 * The warranties of a register with what happened to them.
 *
 * @param certificates every certificate, in the order in which they were issued
 * @param claims every claim, in the order in which they were made
 */
public record WarrantyBook(List<Warranty> certificates, List<Claim> claims) {

    public WarrantyBook {
        certificates = List.copyOf(certificates);
        claims = List.copyOf(claims);
    }

    public static WarrantyBook of(List<Entry> entries) {
        List<Warranty> certificates = new ArrayList<>();
        Map<String, Claim> claims = new LinkedHashMap<>();
        for (Entry entry : entries) {
            entry.warranty().ifPresent(certificates::add);
            if (entry.event() == Event.CLAIM && entry.number().isPresent()) {
                String number = entry.number().get().text();
                ClaimStep step = ClaimStep.of(entry.on(), entry.facts());
                claims.merge(number, new Claim(number, List.of(step)), (known, more) -> known.and(step));
            }
        }
        return new WarrantyBook(certificates, List.copyOf(claims.values()));
    }

    /** The certificates that count now: a reissued one takes the place of the one before. */
    public List<Warranty> current() {
        Map<String, Warranty> latest = new LinkedHashMap<>();
        certificates.forEach(certificate -> latest.put(certificate.first(), certificate));
        return List.copyOf(latest.values());
    }

    /** All certificates of a warranty, the first one first. */
    public List<Warranty> history(Warranty of) {
        return certificates.stream()
                .filter(each -> each.first().equals(of.first()))
                .toList();
    }

    /** The claims on a warranty, under whichever of its certificates they were made. */
    public List<Claim> claims(Warranty on) {
        List<String> numbers = history(on).stream().map(Warranty::number).toList();
        return claims.stream()
                .filter(claim -> claim.last(ClaimStep::certificate)
                        .filter(numbers::contains)
                        .isPresent())
                .toList();
    }

    public Optional<Claim> claim(String number) {
        return claims.stream().filter(claim -> claim.number().equals(number)).findFirst();
    }

    /** The warranty that counts now for a certificate of any age. */
    public Optional<Warranty> current(String certificate) {
        return current().stream()
                .filter(each ->
                        history(each).stream().anyMatch(old -> old.number().equals(certificate)))
                .findFirst();
    }
}
