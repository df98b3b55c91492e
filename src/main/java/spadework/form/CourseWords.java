package spadework.form;

import java.util.ArrayList;
import java.util.List;
import spadework.office.Course;

/** Where a job stands, in plain sentences. */
final class CourseWords {
    private CourseWords() {}

    static String of(Course course) {
        List<String> said = new ArrayList<>();
        said.add(course.proposal().map(issued -> Words.of("stands.issued", issued.number(), issued.on(),
                        issued.total().map(Object::toString).orElse("?"), issued.until().orElse("?")))
                .orElse(Words.of("stands.proposed", course.total())));
        if (course.lost()) {
            said.add(Words.of("stands.lost"));
        }
        course.contract().ifPresent(signed -> {
            said.add(Words.of("stands.signed", signed.number(), signed.on(), signed.by().orElse("?"),
                    signed.total().map(Object::toString).orElse("?")));
            said.add(changes(course));
            said.add(Words.of("stands.paid", course.paid(), course.total(), course.balance()));
            said.add(Words.of(course.recorded() ? "stands.recorded" : "stands.unrecorded"));
        });
        course.certificate().ifPresent(closed -> said.add(Words.of("stands.closed", closed.number(), closed.on())));
        return String.join("\n", said);
    }

    private static String changes(Course course) {
        long accepted = course.changes().stream().filter(Course.Order::accepted).count();
        long open = course.changes().stream().filter(Course.Order::open).count();
        long declined = course.changes().size() - accepted - open;
        return Words.of(course.changes().isEmpty() ? "stands.unchanged" : "stands.changed",
                accepted, open, declined, course.total());
    }

    /** What a change order does, before anybody decides on it. */
    static String of(Course.Order order) {
        List<String> said = new ArrayList<>();
        String state = order.open() ? "pending" : order.accepted() ? "accepted" : "declined";
        said.add(Words.of("order." + state, order.before(), order.price(), order.after(), order.days()));
        said.addAll(order.quantities());
        return String.join("\n", said);
    }
}
