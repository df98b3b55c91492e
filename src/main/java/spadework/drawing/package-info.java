/**
 * The job as drawings: plain shapes on a sheet, in points, without a word of how they are printed.
 *
 * <p>{@link spadework.drawing.PlanSketch} goes four steps. What the job says is first put in feet around the house
 * ({@code Waterways}, {@code Surroundings}). {@code Bands} then says how far from the house each thing is drawn, and
 * {@code Frame} turns feet into points. Lines and symbols are drawn next. Names come last: each is a {@code Wish} that
 * the {@code Placer} grants where nothing else is; what finds no room stands in the key below the figure.
 *
 * <p>{@link spadework.drawing.SectionSketch} cuts through the trench at a wall and
 * {@link spadework.drawing.ProfileSketch} follows the water from the side. Both draw the figure first, then its
 * measures outside it, then what its parts are called. Words of each drawing stand in one class ({@code PlanWords},
 * {@code SectionWords}, {@code ProfileWords}), the same drawing in sentences in another ({@code PlanInWords} and so
 * on).
 *
 * <p>On the plan only the house and its walls are to scale, because only they were measured along the house.
 */
package spadework.drawing;
