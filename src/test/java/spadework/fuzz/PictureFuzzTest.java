// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import spadework.picture.PictureFault;
import spadework.picture.PictureReader;
import spadework.picture.PrintablePicture;

/** Whatever a picture's file holds, it can be printed, or it is told; and what is printed can be read again. */
class PictureFuzzTest {

    @FuzzTest
    void pictureIsPrintableOrTold(byte[] file) {
        PrintablePicture picture;
        try {
            picture = PictureReader.read(file);
        } catch (PictureFault described) {
            ReadableMessage.hold(described.getMessage());
            ReadableMessage.hold(described.allowed());
            ReadableMessage.hold(described.fix());
            return;
        }
        try {
            PictureReader.read(picture.bytes());
        } catch (PictureFault spoiled) {
            throw new AssertionError("what is printed cannot be read", spoiled);
        }
    }
}
