package studio.stancebook.statistics;

import java.math.BigInteger;

/**
 * Decimal digits of pi by Machin's formula, pi = 16 arctan(1/5) - 4 arctan(1/239), and the NIST data set of them, which
 * has one digit wrong.
 */
final class PiDigits {

    private static final int GUARD_DIGITS = 20;

    private PiDigits() {}

    /** The 5000 digits that NIST certified: the 957th, counted from the leading 3, is 3 there and 8 in pi. */
    static double[] asCertifiedByNist() {
        double[] digits = first(5000);
        digits[956] = 3;
        return digits;
    }

    static double[] first(int count) {
        BigInteger one = BigInteger.TEN.pow(count + GUARD_DIGITS);
        BigInteger pi = arctanOfInverse(5, one)
                .multiply(BigInteger.valueOf(16))
                .subtract(arctanOfInverse(239, one).multiply(BigInteger.valueOf(4)));
        return pi.toString()
                .chars()
                .limit(count)
                .mapToDouble(digit -> digit - '0')
                .toArray();
    }

    private static BigInteger arctanOfInverse(int x, BigInteger one) {
        BigInteger power = one.divide(BigInteger.valueOf(x));
        BigInteger square = BigInteger.valueOf((long) x * x);
        BigInteger sum = power;
        for (int k = 3, sign = -1; power.signum() != 0; k += 2, sign = -sign) {
            power = power.divide(square);
            sum = sum.add(power.divide(BigInteger.valueOf((long) sign * k)));
        }
        return sum;
    }
}
