package spadework.form;

import java.util.ArrayList;
import java.util.List;
import spadework.office.Progress;

/** Where a job stands, in plain sentences. */
final class ProgressWords {
    private ProgressWords() {}

    static String of(Progress progress) {
        List<String> said = new ArrayList<>();
        said.add(progress.proposal()
                .map(issued -> Words.of(
                        "stands.issued",
                        issued.number(),
                        issued.on(),
                        issued.total().map(Object::toString).orElse("?"),
                        issued.until().orElse("?")))
                .orElse(Words.of("stands.proposed", progress.total())));
        if (progress.lost()) {
            said.add(Words.of("stands.lost"));
        }
        progress.contract().ifPresent(signed -> {
            said.add(Words.of(
                    "stands.signed",
                    signed.number(),
                    signed.on(),
                    signed.by().orElse("?"),
                    signed.total().map(Object::toString).orElse("?")));
            said.add(changes(progress));
            said.add(Words.of("stands.paid", progress.paid(), progress.total(), progress.balance()));
            said.add(Words.of(progress.recorded() ? "stands.recorded" : "stands.unrecorded"));
        });
        progress.certificate().ifPresent(closed -> said.add(Words.of("stands.closed", closed.number(), closed.on())));
        return String.join("\n", said);
    }

    private static String changes(Progress progress) {
        long accepted =
                progress.changes().stream().filter(Progress.Order::accepted).count();
        long open = progress.changes().stream().filter(Progress.Order::open).count();
        long declined = progress.changes().size() - accepted - open;
        return Words.of(
                progress.changes().isEmpty() ? "stands.unchanged" : "stands.changed",
                accepted,
                open,
                declined,
                progress.total());
    }

    /** What a change order does, before anybody decides on it. */
    static String of(Progress.Order order) {
        List<String> said = new ArrayList<>();
        String state = order.open() ? "pending" : order.accepted() ? "accepted" : "declined";
        said.add(Words.of("order." + state, order.before(), order.price(), order.after(), order.days()));
        said.addAll(order.quantities());
        return String.join("\n", said);
    }
}
