package org.roofspring.hydraulics.pump;

/** Where an energy per volume was taken. */
public enum EnergyBasis {
    /** Input power as measured: what the meter reads. */
    MEASURED_INPUT,
    /** Shaft power over the efficiency of the motor. */
    MOTOR_EFFICIENCY,
    /** Shaft power alone; the motor takes more. */
    SHAFT
}
