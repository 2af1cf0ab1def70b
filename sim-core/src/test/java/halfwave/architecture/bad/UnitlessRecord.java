package halfwave.architecture.bad;

/** Breaks the unit rule four times and keeps it three times. */
record UnitlessRecord(
    double current,
    double[] samples,
    double[][] table,
    Double leadMilliamps,
    double goodVolts,
    double ohms,
    int steps) {}
