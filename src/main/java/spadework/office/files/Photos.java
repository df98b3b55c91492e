// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.disk.InsideFolder;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.job.Change;
import spadework.job.HoldPoint;
import spadework.job.Job;
import spadework.job.Photo;
import spadework.paperwork.Picture;
import spadework.paperwork.WorkPictures;
import spadework.picture.PictureFault;
import spadework.reason.Reason;

/** The photos that a job names, read from its folder: of the visit, of change orders, of hold points. */
public final class Photos {
    private Photos() {}

    /** A fault for each photo that is not there, lies elsewhere, or cannot be printed. */
    public static List<Fault> faults(Job job, Path folder, PictureFiles.Album album) {
        List<Fault> faults = new ArrayList<>();
        String jobFile = folder.resolve("job.json").toString();
        named(job)
                .forEach((pointer, name) -> fault(new Place(jobFile, 0, 0, pointer), folder, name, album)
                        .ifPresent(faults::add));
        return faults;
    }

    /** What is wrong with a picture of a folder, if anything. */
    static Optional<Fault> fault(Place place, Path folder, String name, PictureFiles.Album album) {
        Path file = folder.resolve(name);
        try {
            if (!Files.isRegularFile(file)) {
                return Optional.of(new Fault(
                        place,
                        "no file " + file,
                        "a picture in the job's folder",
                        "put it there, or take it off the list"));
            }
            album.look(InsideFolder.existing(folder, name));
            return Optional.empty();
        } catch (PictureFault unprintable) {
            return Optional.of(new Fault(
                    place,
                    unprintable.getMessage() + ", " + file,
                    unprintable.allowed(),
                    unprintable.fix() + ", or take it off the list"));
        } catch (IOException unreadable) {
            return Optional.of(new Fault(
                    place,
                    Reason.of(unreadable),
                    "a picture in the job's folder that may be read",
                    "put the picture itself there, or take it off the list"));
        }
    }

    /** The photos of the visit. */
    public static List<Picture> of(Job job, Path folder, PictureFiles.Album album) {
        return pictures(job.photos(), folder, album);
    }

    /** The photos that were taken while the work went on. */
    public static WorkPictures ofWork(Job job, Path folder, PictureFiles.Album album) {
        Map<Integer, List<Picture>> changes = new HashMap<>();
        job.agreement().changes().stream()
                .filter(change -> !change.photos().isEmpty())
                .forEach(change -> changes.put(change.number(), pictures(change.photos(), folder, album)));
        return new WorkPictures(changes, pictures(holdPoints(job), folder, album));
    }

    /** The file of every photo by its place in the job's file. */
    private static Map<String, String> named(Job job) {
        Map<String, String> named = new LinkedHashMap<>();
        add("", job.photos(), named);
        List<Change> changes = job.agreement().changes();
        for (int i = 0; i < changes.size(); i++) {
            add("/changes/" + i, changes.get(i).photos(), named);
        }
        List<BuiltWall> walls = job.agreement().asBuilt().map(AsBuilt::walls).orElse(List.of());
        for (int i = 0; i < walls.size(); i++) {
            List<HoldPoint> points = walls.get(i).holdPoints();
            for (int k = 0; k < points.size(); k++) {
                String pointer = "/asBuilt/walls/" + i + "/holdPoints/" + k + "/photo";
                points.get(k).photo().ifPresent(file -> named.put(pointer, file));
            }
        }
        return named;
    }

    private static void add(String pointer, List<Photo> photos, Map<String, String> named) {
        for (int i = 0; i < photos.size(); i++) {
            named.put(pointer + "/photos/" + i + "/file", photos.get(i).file());
        }
    }

    /** One photo for each file, told by the first hold point that names it. */
    private static List<Photo> holdPoints(Job job) {
        Map<String, Photo> photos = new LinkedHashMap<>();
        for (BuiltWall wall : job.agreement().asBuilt().map(AsBuilt::walls).orElse(List.of())) {
            for (HoldPoint point : wall.holdPoints()) {
                Optional<String> file = point.photo();
                file.ifPresent(name -> photos.putIfAbsent(name, new Photo(name, wall.label() + ": " + point.point())));
            }
        }
        return List.copyOf(photos.values());
    }

    private static List<Picture> pictures(List<Photo> photos, Path folder, PictureFiles.Album album) {
        List<Picture> pictures = new ArrayList<>();
        for (Photo photo : photos) {
            pictures.add(new Picture(
                    pictures.size() + 1, photo.file(), photo.caption(), album.address(folder.resolve(photo.file()))));
        }
        return pictures;
    }
}
