// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.List;

/**
 * A drawing as plain shapes.
 *
 * @param width in points
 * @param height in points
 * @param alternative the drawing in words, for whoever cannot see it
 */
public record Scene(double width, double height, List<Shape> shapes, String alternative) {

    public Scene {
        shapes = List.copyOf(shapes);
    }
}
