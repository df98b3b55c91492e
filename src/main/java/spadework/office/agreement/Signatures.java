package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.office.files.FileName;
import spadework.register.DocumentNumber;

/** Signatures on paper: the file that shows them is kept with what was signed. */
public final class Signatures {
    private Signatures() {}

    /** What is wanting in a signature. */
    static List<String> reasons(Path file, SignatureInput yes) {
        List<String> reasons = new ArrayList<>();
        if (yes.by().isEmpty()) {
            reasons.add("Nobody is named who signed; on the command line: --by NAME");
        }
        if (yes.file().isPresent() == yes.typed().isPresent()) {
            reasons.add("Say how it was signed, in one way: the file of the signed paper, or the name as typed; "
                    + "on the command line: --signature FILE, or --typed NAME");
        }
        if (yes.typed().isPresent() && yes.consent().isEmpty()) {
            reasons.add("A typed name needs how the signer agreed to sign without paper; on the command line: "
                    + "--consent TEXT");
        }
        yes.file()
                .map(name -> path(file, name))
                .filter(path -> !Files.isRegularFile(path))
                .ifPresent(path ->
                        reasons.add("There is no file " + path + "; put the signed paper into the job's folder."));
        return reasons;
    }

    /** Puts the signed paper among the files that are kept. */
    static void keep(Map<String, byte[]> files, DocumentNumber number, Path file, SignatureInput yes)
            throws IOException {
        if (yes.file().isPresent()) {
            String name = yes.file().get();
            int point = name.lastIndexOf('.');
            String ending = point < 0 ? "" : name.substring(point).replaceAll("[^A-Za-z0-9.]", "");
            files.put(FileName.safe(number.text()) + "-signature" + ending, Files.readAllBytes(path(file, name)));
        }
    }

    private static Path path(Path file, String name) {
        return file.toAbsolutePath().getParent().resolve(name);
    }
}
