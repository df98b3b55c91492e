// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.pricebook.PriceBook;
import spadework.water.Pipes;

/**
 * How the stone lies along one wall. At each station its top is 6 in over the footing's top or 6 in over the pipe's
 * top, whichever is higher (IRC R405.1; F-04, F-06); its bottom is the trench's.
 *
 * @param measured false where levels are missing; the pipe is then taken to lie on its 2 in of stone
 * @param stations from the wall's start to its end
 */
public record StoneProfile(boolean measured, List<StoneStation> stations) {
    /** Stone under a pipe whose levels are not known, feet: 2 in (IRC R405.1, F-05). */
    public static final double BEDDING = 2.0 / 12;

    /** Stone over the pipe and over the footing: 6 in, in feet (IRC R405.1; F-04, F-06). */
    public static final double COVER = 0.5;

    public StoneProfile {
        stations = List.copyOf(stations);
    }

    /** The profile at each wall of a drain, by the wall's label. */
    public static Map<String, StoneProfile> of(Job job, PriceBook book, FootingDrain drain) {
        return new DrainLine(job, drain, Pipes.of(drain, book)).profiles();
    }

    static StoneProfile of(boolean measured, double footing, double outside, List<double[]> pipe) {
        double least = footing + COVER;
        List<StoneStation> stations = new ArrayList<>();
        for (int i = 0; i < pipe.size(); i++) {
            double at = pipe.get(i)[0];
            double under = pipe.get(i)[1];
            if (i > 0) {
                double before = pipe.get(i - 1)[1];
                double even = least - outside - COVER;
                if ((before - even) * (under - even) < 0) {
                    double share = (even - before) / (under - before);
                    double from = pipe.get(i - 1)[0];
                    stations.add(new StoneStation(from + (at - from) * share, even, least));
                }
            }
            stations.add(new StoneStation(at, under, Math.max(least, under + outside + COVER)));
        }
        return new StoneProfile(measured, stations);
    }

    /** Height of the stone at the wall's start or its end. */
    public double heightAt(boolean atEnd) {
        return stations.get(atEnd ? stations.size() - 1 : 0).height();
    }

    public boolean isLevel() {
        return stations.stream()
                .allMatch(one -> Math.abs(one.height() - stations.get(0).height()) < 1e-9);
    }

    /** Its stations with one more wherever the stone's top passes one of these heights, straight between two. */
    public List<StoneStation> split(List<Double> heights) {
        List<StoneStation> split = new ArrayList<>();
        for (StoneStation station : stations) {
            if (!split.isEmpty()) {
                StoneStation from = split.get(split.size() - 1);
                heights.stream()
                        .filter(height -> (from.height() - height) * (station.height() - height) < 0)
                        .map(height -> from.at()
                                + (station.at() - from.at())
                                        * (height - from.height())
                                        / (station.height() - from.height()))
                        .sorted()
                        .map(this::at)
                        .forEach(split::add);
            }
            split.add(station);
        }
        return split;
    }

    /** The station at a distance along the wall. */
    public StoneStation at(double feet) {
        for (int i = 1; i < stations.size(); i++) {
            StoneStation a = stations.get(i - 1);
            StoneStation b = stations.get(i);
            if (feet <= b.at() && b.at() > a.at()) {
                double share = Math.max(0, (feet - a.at()) / (b.at() - a.at()));
                return new StoneStation(
                        feet,
                        a.under() + (b.under() - a.under()) * share,
                        a.height() + (b.height() - a.height()) * share);
            }
        }
        return stations.get(stations.size() - 1);
    }
}
