package eddyreach.numerics;

/**
 * Bessel functions of the first kind with real argument, and the radial integral of r J1(k r).
 *
 * <p>J0 and J1: for |x| below 8 polynomials in x^2 (below 4 and above), from 8 on the modulus and phase form
 * {@code J_n(x) = sqrt(2/(pi x)) (P_n cos X - Q_n sin X)}, X = x - (2n+1) pi/4 (Abramowitz and Stegun 1964, 9.2.5), with P_n and
 * Q_n as polynomials in t = 2 (8/x)^2 - 1. All coefficients come from Chebyshev interpolation of 40-digit values.
 *
 * <p>Accuracy: about 1e-15 of the amplitude (1 for small x, sqrt(2/(pi x)) for large x) up to x about 1e3; beyond, the rounding
 * of x itself costs x times 1e-16.
 */
public final class Bessel {

    private static final double NEAR = 4;
    private static final double SPLIT = 8;
    private static final int MAX_ORDER = 20;
    private static final double RESCALE = 1e150;

    /** Widest k (r2 - r1) that the 16-point rule integrates to rounding. */
    private static final double ONE_PANEL = 8;

    private static final GaussLegendre PANEL = GaussLegendre.of(16, -1, 1);

    private static final double[] J0_NEAR = {
        -0.1965480952704682,
        -0.565959973761085,
        0.4795280821510107,
        -0.13103206351364546,
        0.01835270061006565,
        -0.001578954136687973,
        9.228173990226533e-05,
        -3.9103419787067474e-06,
        1.2577280629362692e-07,
        -3.177439513701625e-09,
        6.474430237323753e-11,
        -1.086837351960608e-12,
        1.5299831954926877e-14,
        -1.8307481747428706e-16
    };

    private static final double[] J1_NEAR = {
        0.14148999344027124,
        -0.23976404107550536,
        0.0982740476352341,
        -0.01835270061006565,
        0.001973692670859966,
        -0.00013842260985340126,
        6.843098462736768e-06,
        -2.5154561257487614e-07,
        7.14923890591187e-09,
        -1.6186077862568024e-10,
        2.9888026365273805e-12,
        -4.5879691356948933e-14,
        5.950227438433868e-16,
        -6.6015220158612294e-18
    };

    private static final double[] M1_NEAR = {
        0.08762862077626599,
        -0.06069793444426335,
        0.015931407786452845,
        -0.002207634478322638,
        0.00018950121185476164,
        -1.1082065954241177e-05,
        4.703539626445006e-07,
        -1.5157926923621642e-08,
        3.836965704249794e-10,
        -7.833107346847048e-12,
        1.3172377301944247e-13,
        -1.8565483727389634e-15,
        2.2257935397931996e-17,
        -2.2962066244829207e-19
    };

    private static final double[] J0_MID = {
        0.22884381861489356,
        0.38275938851646063,
        -0.5267466900617466,
        -0.01895695708517774,
        0.16655463770685366,
        -0.07653397382395791,
        0.01828043038715881,
        -0.0028413092999127042,
        0.0003165168575563646,
        -2.674352570577755e-05,
        1.7808295981195608e-06,
        -9.611892928115489e-08,
        4.297308399060203e-09,
        -1.6193087672253331e-10,
        5.230931898749812e-12,
        -1.457164099451955e-13
    };

    private static final double[] J1_MID = {
        -0.031896615709705055,
        0.0877911150102911,
        0.004739239271294435,
        -0.05551821256895132,
        0.031889155759982454,
        -0.00914021519357824,
        0.0016574304249491192,
        -0.00021101123837700985,
        2.0057644279202134e-05,
        -1.4840246488322676e-06,
        8.810901871737486e-08,
        -4.297331469598251e-09,
        1.7542495126977203e-10,
        -6.086190138818505e-12,
        1.8219633725443033e-13,
        -4.732567311160238e-15
    };

    private static final double[] M1_MID = {
        -0.0026834787459884294,
        -0.007153853841521929,
        0.018534057632685112,
        -0.012499916415750136,
        0.004273577637959992,
        -0.0009072118954546471,
        0.0001326769723666107,
        -1.4259606880717795e-05,
        1.1775779473115467e-06,
        -7.72112239863362e-08,
        4.1223316638587555e-09,
        -1.8285299331399203e-10,
        6.849813487375555e-12,
        -2.1968890566018114e-13,
        6.115270032960873e-15,
        -1.4852720930632187e-16
    };

    private static final double[] P0 = {
        0.9994572757882519,
        -0.0005363673192130046,
        6.13741608016085e-06,
        -2.0527448156495066e-07,
        1.2803760619529231e-08,
        -1.2121181917899886e-09,
        1.5501058085561605e-10,
        -2.488275527812745e-11,
        4.772925905800956e-12,
        -1.0635980595216018e-12,
        2.659486692682967e-13,
        -6.423863317028666e-14,
        1.839323047121498e-14,
        -1.1778137922744418e-14,
        4.285344320644563e-15
    };

    private static final double[] Q0 = {
        -0.015555113879513518,
        6.833149099344075e-05,
        -1.4771388326473744e-06,
        7.106214852432276e-08,
        -5.668716091144362e-09,
        6.432789309241135e-10,
        -9.470386229469955e-11,
        1.702943915933753e-11,
        -3.5891751531936186e-12,
        8.68860563656614e-13,
        -2.330636917551769e-13,
        5.765391531338497e-14,
        -1.7256018173230505e-14,
        1.2703337763959492e-14,
        -4.832460403369333e-15
    };

    private static final double[] P1 = {
        1.0009070262780821,
        0.0008988049416705578,
        -7.959694698492521e-06,
        2.453676622286961e-07,
        -1.4708512124130545e-08,
        1.3603057890123779e-09,
        -1.713159495740877e-10,
        2.7204123552148816e-11,
        -5.176302123326507e-12,
        1.1461306026400314e-12,
        -2.851410619022524e-13,
        6.871916868892792e-14,
        -1.961627571558179e-14,
        1.2466964342989236e-14,
        -4.5247520559705565e-15
    };

    private static final double[] Q1 = {
        0.04677687402744898,
        -9.621458822054624e-05,
        1.8212018512285427e-06,
        -8.291960701565042e-08,
        6.4201325429831086e-09,
        -7.151113407635711e-10,
        1.0395068460328534e-10,
        -1.8520806488547767e-11,
        3.876268151236579e-12,
        -9.33020006505065e-13,
        2.4914316871937574e-13,
        -6.154174237314398e-14,
        1.8370749899635615e-14,
        -1.3419652685122838e-14,
        5.093381730784018e-15
    };

    private static final double[] IA = {
        0.07584786784705926,
        -0.0020675993042880833,
        0.00017545393404664453,
        -2.6292954573031126e-05,
        5.559360837900275e-06,
        -1.4798166740262414e-06,
        4.6456188266121845e-07,
        -1.6636923373364644e-07,
        6.546438738083354e-08,
        -2.3672350257993872e-08,
        9.960269451253776e-09,
        -1.2302311500259898e-08,
        7.073709931093396e-09,
        4.37098653900921e-09,
        -2.965883509924577e-09,
        -2.9010356419737528e-09,
        1.814157129257264e-09
    };

    private static final double[] IB = {
        0.9926049880906637,
        -0.006980231152325861,
        0.0003641088430125589,
        -4.111257926659363e-05,
        7.182091173719632e-06,
        -1.6617246587423433e-06,
        4.6778785794265994e-07,
        -1.5286520011866982e-07,
        5.577988244948793e-08,
        -2.0059394917090266e-08,
        8.17346998057025e-09,
        -7.659840551855676e-09,
        4.17244190176704e-09,
        2.1205337046455905e-09,
        -1.437303770582545e-09,
        -1.6038320653008824e-09,
        9.747896748432547e-10
    };

    private Bessel() {}

    /** Bessel function J0(x), any finite x. */
    public static double j0(double x) {
        double s = Math.abs(x);
        if (s < NEAR) {
            return polynomial(J0_NEAR, nearVariable(s));
        }
        if (s < SPLIT) {
            return polynomial(J0_MID, middleVariable(s));
        }
        double z = SPLIT / s;
        double t = 2 * z * z - 1;
        double p = polynomial(P0, t);
        double q = z * polynomial(Q0, t);
        double sin = Math.sin(s);
        double cos = Math.cos(s);
        // cos(s - pi/4) and sin(s - pi/4), both times sqrt 2
        return (p * (cos + sin) - q * (sin - cos)) / Math.sqrt(Math.PI * s);
    }

    /** Bessel function J1(x), any finite x; odd, with full relative accuracy near 0. */
    public static double j1(double x) {
        double s = Math.abs(x);
        if (s < NEAR) {
            return x * polynomial(J1_NEAR, nearVariable(s));
        }
        if (s < SPLIT) {
            return x * polynomial(J1_MID, middleVariable(s));
        }
        double z = SPLIT / s;
        double t = 2 * z * z - 1;
        double p = polynomial(P1, t);
        double q = z * polynomial(Q1, t);
        double sin = Math.sin(s);
        double cos = Math.cos(s);
        // cos(s - 3pi/4) and sin(s - 3pi/4), both times sqrt 2
        double value = (p * (sin - cos) + q * (sin + cos)) / Math.sqrt(Math.PI * s);
        return x < 0 ? -value : value;
    }

    /**
     * Bessel function J_n(x): upward recurrence for x above n, Miller's downward recurrence below (Abramowitz and Stegun 1964,
     * 9.1.27 and 9.12).
     *
     * @param n order, 0 to 20
     * @param x any finite argument
     * @throws IllegalArgumentException if the order is out of range
     */
    public static double jn(int n, double x) {
        if (n < 0 || n > MAX_ORDER) {
            throw new IllegalArgumentException("order n = " + n + ", must be 0 to " + MAX_ORDER);
        }
        if (n == 0) {
            return j0(x);
        }
        if (n == 1) {
            return j1(x);
        }
        double s = Math.abs(x);
        if (s == 0) {
            return 0;
        }
        double value = s > n ? upward(n, s) : downward(n, s);
        return x < 0 && n % 2 == 1 ? -value : value;
    }

    /**
     * The integral of r J1(k r) over r from r1 to r2, in units of r squared: the radial part of a coil of rectangular section.
     *
     * <p>{@code (F(k r2) - F(k r1)) / k^2} with {@link #moment1}; where the two would cancel, Gauss quadrature of the integrand
     * instead. Accuracy: 1e-14 of the amplitude {@code r2^(1/2) k^(-3/2)} or of the value, whichever is larger.
     *
     * @param k spatial frequency, 1/m, not negative
     * @param r1 inner radius, m, not negative
     * @param r2 outer radius, m
     */
    public static double integralRJ1(double k, double r1, double r2) {
        double half = (r2 - r1) / 2;
        if (2 * Math.abs(half) * k > ONE_PANEL) {
            return (moment1(k * r2) - moment1(k * r1)) / (k * k);
        }
        double middle = (r1 + r2) / 2;
        double sum = 0;
        for (int i = 0; i < PANEL.size(); i++) {
            double r = middle + half * PANEL.node(i);
            sum += PANEL.weight(i) * r * j1(k * r);
        }
        return half * sum;
    }

    /**
     * F(x), the integral of t J1(t) over t from 0 to x: {@code (pi x/2)(J1(x) H0(x) - J0(x) H1(x))} with Struve functions H
     * (Abramowitz and Stegun 1964, 11.1.7 with F = int J0 - x J0). Computed from polynomials below 8 and as
     * {@code 1 - int_x^inf J0 dt - x J0(x)} above, the integral in modulus and phase form.
     *
     * @param x not negative
     */
    public static double moment1(double x) {
        if (x < NEAR) {
            return x * x * x * polynomial(M1_NEAR, nearVariable(x));
        }
        if (x < SPLIT) {
            return x * x * x * polynomial(M1_MID, middleVariable(x));
        }
        double z = SPLIT / x;
        double t = 2 * z * z - 1;
        double p = z * polynomial(IA, t);
        double q = polynomial(IB, t);
        double sin = Math.sin(x);
        double cos = Math.cos(x);
        double tail = (p * (cos + sin) - q * (sin - cos)) / Math.sqrt(Math.PI * x);
        return 1 - tail - x * j0(x);
    }

    private static double nearVariable(double x) {
        return x * x / 8 - 1;
    }

    private static double middleVariable(double x) {
        return (x * x - 40) / 24;
    }

    private static double upward(int n, double x) {
        double before = j0(x);
        double now = j1(x);
        for (int i = 1; i < n; i++) {
            double next = 2 * i / x * now - before;
            before = now;
            now = next;
        }
        return now;
    }

    private static double downward(int n, double x) {
        if (x * x < 1e-12) {
            return leadingTerm(n, x);
        }
        int start = 2 * ((n + 30) / 2);
        double after = 0;
        double now = 1e-200;
        double wanted = 0;
        // 1 = J0 + 2 J2 + 2 J4 + ... fixes the scale
        double norm = 0;
        for (int i = start; i > 0; i--) {
            if (i % 2 == 0) {
                norm += 2 * now;
            }
            double before = 2 * i / x * now - after;
            after = now;
            now = before;
            if (i - 1 == n) {
                wanted = now;
            }
            if (Math.abs(now) > RESCALE) {
                now /= RESCALE;
                after /= RESCALE;
                norm /= RESCALE;
                wanted /= RESCALE;
            }
        }
        return wanted / (norm + now);
    }

    private static double leadingTerm(int n, double x) {
        double value = 1;
        for (int i = 1; i <= n; i++) {
            value *= x / 2 / i;
        }
        return value;
    }

    /** Two interleaved Horner chains: the processor overlaps them, one chain would be bound by latency. */
    private static double polynomial(double[] c, double t) {
        double t2 = t * t;
        int top = c.length - 1;
        double a = c[top];
        double b = c[top - 1];
        for (int i = top - 2; i > 0; i -= 2) {
            a = a * t2 + c[i];
            b = b * t2 + c[i - 1];
        }
        if (top % 2 == 0) {
            return a * t2 + c[0] + b * t;
        }
        return a * t + b;
    }
}
