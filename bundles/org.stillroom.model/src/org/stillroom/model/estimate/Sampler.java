package org.stillroom.model.estimate;

import java.util.SplittableRandom;

/** Draws values of one unknown. */
final class Sampler {

    private Sampler() {}

    static double sample(Origin origin, SplittableRandom random) {
        double width = origin.high() - origin.low();
        if (width == 0) {
            return origin.low();
        }
        return switch (origin.shape()) {
            case RECTANGULAR -> origin.low() + width * random.nextDouble();
            case TRIANGULAR -> triangular(origin, random.nextDouble());
            case PERT -> {
                double peak = (origin.likely() - origin.low()) / width;
                yield origin.low() + width * beta(1 + 4 * peak, 5 - 4 * peak, random);
            }
        };
    }

    /** Inverts the cumulative distribution (JCGM 101:2008, 6.4.5). */
    private static double triangular(Origin o, double p) {
        double width = o.high() - o.low();
        double peak = (o.likely() - o.low()) / width;
        return p < peak
                ? o.low() + Math.sqrt(p * width * (o.likely() - o.low()))
                : o.high() - Math.sqrt((1 - p) * width * (o.high() - o.likely()));
    }

    private static double beta(double a, double b, SplittableRandom random) {
        double x = gamma(a, random);
        return x / (x + gamma(b, random));
    }

    /** Draws from the gamma distribution, shape 1 or more (Marsaglia and Tsang, 2000). */
    private static double gamma(double shape, SplittableRandom random) {
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = 1 + c * x;
            if (v > 0) {
                v = v * v * v;
                if (Math.log(random.nextDouble()) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                    return d * v;
                }
            }
        }
    }
}
