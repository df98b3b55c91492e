package spadework.office;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.job.Job;
import spadework.job.Photo;
import spadework.paperwork.Picture;

/** The photos that a job names, read from its folder. */
final class Photos {
    private Photos() {}

    /** A fault for each photo that is not there. */
    static List<Fault> missing(Job job, Path folder) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < job.photos().size(); i++) {
            Path file = folder.resolve(job.photos().get(i).file());
            if (!Files.isRegularFile(file)) {
                faults.add(new Fault(
                        new Place(folder.resolve("job.json").toString(), 0, 0, "/photos/" + i + "/file"),
                        "no file " + file,
                        "a picture in the job's folder",
                        "put it there, or take it off the list"));
            }
        }
        return faults;
    }

    static List<Picture> of(Job job, Path folder) {
        List<Picture> pictures = new ArrayList<>();
        for (Photo photo : job.photos()) {
            pictures.add(new Picture(
                    pictures.size() + 1, photo.file(), photo.caption(), DataAddress.of(folder.resolve(photo.file()))));
        }
        return pictures;
    }
}
