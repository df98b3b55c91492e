// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Reads pictures that somebody else made. What a picture is, is read from its bytes and never from its name. It is
 * bounded before it is decoded: in bytes, pixels and scans; and while it is decoded, in time.
 */
public final class PictureReader {
    /** The largest file, in bytes. */
    public static final int LARGEST_FILE = 40 * 1024 * 1024;
    /** The longest side that goes on a page, in pixels: 7 inches at 285 dots an inch. */
    static final int LONGEST_SIDE = 2000;

    private static final long LARGEST_JPEG = 120_000_000;
    private static final long LARGEST_HELD_WHOLE = 40_000_000;
    private static final int MOST_SCANS = 100;
    private static final int SECONDS = 20;
    private static final float QUALITY = 0.88f;
    private static final String ALLOWED = "a JPEG or PNG picture in gray or RGB colors";
    private static final String SAVE = "open it in a picture program and save it as a plain JPEG";

    static {
        // Pictures are read from memory; the copy that the platform would make of each on disk helps nobody.
        ImageIO.setUseCache(false);
    }

    private PictureReader() {}

    /**
     * The picture as it can be printed.
     *
     * @throws PictureFault if it is none, is too large, or cannot be decoded whole
     */
    public static PrintablePicture read(byte[] file) throws PictureFault {
        if (file.length > LARGEST_FILE) {
            throw new PictureFault(
                    "a file of " + (file.length >> 20) + " MB", "a picture of at most 40 MB", "save it smaller");
        }
        if (JpegParts.isOne(file)) {
            JpegParts parts = JpegParts.of(file);
            if (parts.scans() > MOST_SCANS) {
                throw new PictureFault("a JPEG picture in " + parts.scans() + " layers", "at most " + MOST_SCANS, SAVE);
            }
            long most = parts.isProgressive() ? LARGEST_HELD_WHOLE : LARGEST_JPEG;
            return decoded("jpeg", parts.kept(), parts.orientation(), most);
        }
        if (PngParts.isOne(file)) {
            return decoded("png", PngParts.kept(file), 1, LARGEST_HELD_WHOLE);
        }
        throw new PictureFault(kind(file), ALLOWED, SAVE);
    }

    private static String kind(byte[] file) {
        String head = new String(file, 0, Math.min(32, file.length), java.nio.charset.StandardCharsets.ISO_8859_1);
        if (head.startsWith("ftyphei", 4) || head.startsWith("ftypmif1", 4) || head.startsWith("ftypavif", 4)) {
            return "a HEIC or AVIF picture, as some phones save them";
        }
        if (head.startsWith("RIFF") && head.startsWith("WEBP", 8)) {
            return "a WebP picture";
        }
        if (head.startsWith("%PDF")) {
            return "a PDF";
        }
        return file.length == 0 ? "an empty file" : "a file that is no picture";
    }

    private static PrintablePicture decoded(String kind, byte[] plain, int orientation, long most) throws PictureFault {
        CompletableFuture<PrintablePicture> decoding = new CompletableFuture<>();
        Thread decoder = new Thread(
                () -> {
                    try {
                        decoding.complete(decode(kind, plain, orientation, most));
                    } catch (IOException | RuntimeException | Error failed) {
                        decoding.completeExceptionally(failed);
                    }
                },
                "picture");
        decoder.setDaemon(true);
        decoder.start();
        try {
            return decoding.get(SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException tooLong) {
            throw new PictureFault("a picture that took more than " + SECONDS + " seconds to decode", ALLOWED, SAVE);
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof PictureFault fault ? fault : undecodable(kind, failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new PictureFault("a picture whose decoding was broken off", ALLOWED, "do it again");
        }
    }

    private static PictureFault undecodable(String kind, Throwable why) {
        boolean memory = why instanceof OutOfMemoryError;
        boolean colors = String.valueOf(why.getMessage()).contains("Unsupported Image Type");
        return new PictureFault(
                memory
                        ? "a picture that needs more memory than the program has"
                        : colors
                                ? "a picture in colors for a printing press (CMYK)"
                                : "a " + (kind.equals("png") ? "PNG" : "JPEG") + " picture that cannot be decoded",
                ALLOWED,
                SAVE);
    }

    private static PrintablePicture decode(String kind, byte[] plain, int orientation, long most) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(kind);
        ImageReader reader = readers.next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(plain))) {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if ((long) width * height > most) {
                throw new PictureFault(
                        "a picture of " + width + " × " + height + " pixels",
                        "at most " + most / 1_000_000 + " million pixels",
                        "save it smaller");
            }
            boolean[] broken = new boolean[1];
            reader.addIIOReadWarningListener((source, warning) -> broken[0] |= warning.contains("Premature end"));
            ImageReadParam param = reader.getDefaultReadParam();
            int longest = Math.max(width, height);
            int step = Math.max(1, longest / (2 * LONGEST_SIDE));
            param.setSourceSubsampling(step, step, 0, 0);
            BufferedImage picture = reader.read(0, param);
            if (broken[0]) {
                throw new PictureFault(
                        "a picture that ends before it is whole", "a whole picture", "copy it from the camera again");
            }
            boolean plainColors = picture.getSampleModel().getSampleSize(0) <= 8;
            if (orientation == 1 && longest <= LONGEST_SIDE && plainColors) {
                return new PrintablePicture(kind, plain);
            }
            return new PrintablePicture(kind, written(kind, Upright.of(picture, orientation, LONGEST_SIDE)));
        } finally {
            reader.dispose();
        }
    }

    private static byte[] written(String kind, BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName(kind).next();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            if (kind.equals("jpeg")) {
                param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                param.setCompressionQuality(QUALITY);
            }
            writer.write(null, new IIOImage(picture, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
