// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.ArrayList;
import java.util.List;
import spadework.form.kit.Messages;
import spadework.office.agreement.Progress;
import spadework.office.agreement.SignatureList;

/** Where a job stands, in plain sentences. */
public final class ProgressMessages {
    private ProgressMessages() {}

    static String of(Progress progress) {
        List<String> said = new ArrayList<>();
        said.add(progress.proposal()
                .map(issued -> Messages.of(
                        "stands.issued",
                        issued.number(),
                        issued.on(),
                        issued.total().map(Object::toString).orElse("?"),
                        issued.until().orElse("?")))
                .orElse(Messages.of("stands.proposed", progress.sums().total())));
        progress.proposal().ifPresent(issued -> said.addAll(signatures(issued.signatures())));
        if (progress.lost()) {
            said.add(Messages.of("stands.lost"));
        }
        progress.contract().ifPresent(signed -> {
            said.add(Messages.of(
                    "stands.signed",
                    signed.number(),
                    signed.on(),
                    signed.by().orElse("?"),
                    signed.total().map(Object::toString).orElse("?")));
            said.addAll(signatures(signed.signatures()));
            said.add(changes(progress));
            said.add(Messages.of(
                    "stands.paid",
                    progress.sums().paid(),
                    progress.sums().total(),
                    progress.sums().balance()));
            said.add(Messages.of(progress.recorded() ? "stands.recorded" : "stands.unrecorded"));
        });
        progress.certificate()
                .ifPresent(closed -> said.add(Messages.of("stands.closed", closed.number(), closed.on())));
        progress.canceled()
                .ifPresent(notice -> said.add(
                        Messages.of("stands.canceled", notice.number(), notice.on(), notice.refund(), notice.by())));
        return String.join("\n", said);
    }

    /** Each of them with who signed, when and how, and who has still to. */
    private static List<String> signatures(SignatureList signatures) {
        List<String> said = new ArrayList<>();
        for (SignatureList.One one : signatures.all()) {
            said.add(
                    one.file().isPresent()
                            ? Messages.of(
                                    "stands.onPaper",
                                    one.by(),
                                    one.on(),
                                    one.file().get())
                            : Messages.of(
                                    "stands.typed",
                                    one.by(),
                                    one.on(),
                                    one.typed().orElse("?")));
        }
        if (!signatures.missing().isEmpty()) {
            said.add(Messages.of("stands.missing", String.join(", ", signatures.missing())));
        }
        return said;
    }

    private static String changes(Progress progress) {
        long accepted =
                progress.changes().stream().filter(Progress.Order::accepted).count();
        long open = progress.changes().stream().filter(Progress.Order::open).count();
        long declined = progress.changes().size() - accepted - open;
        return Messages.of(
                progress.changes().isEmpty() ? "stands.unchanged" : "stands.changed",
                accepted,
                open,
                declined,
                progress.sums().total());
    }

    /** What a change order does, before anybody decides on it. */
    static String of(Progress.Order order) {
        List<String> said = new ArrayList<>();
        String state = order.open() ? "pending" : order.accepted() ? "accepted" : "declined";
        said.add(Messages.of("order." + state, order.before(), order.price(), order.after(), order.days()));
        said.addAll(order.quantities());
        said.addAll(signatures(order.signatures()));
        return String.join("\n", said);
    }
}
