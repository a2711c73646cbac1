package org.roofspring.storage.system;

/** The series of a run in whole units, checked once and shared by runs. The arrays are not to be written to. */
record SystemInputs(long[][] inflow, long[][] demand, double[] evaporationMm) {

    static SystemInputs of(StorageSystem system, SystemSeries series) {
        return new SystemInputs(series.inflowUnits(system), series.demandUnits(system),
                series.checkedEvaporationMm());
    }

    int days() {
        return evaporationMm.length;
    }
}
