package org.roofspring.storage.system;

import java.util.List;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.internal.FixedVolume;

/** Outcome of a run of a whole system. */
public final class SystemResult {

    private final BalanceResult whole;
    private final List<UseResult> uses;
    private final TopUpResult topUp;
    private final double[] transferredM3;
    private final long[][] stageVolume;

    SystemResult(BalanceResult whole, List<UseResult> uses, TopUpResult topUp, double[] transferredM3,
            long[][] stageVolume) {
        this.whole = whole;
        this.uses = List.copyOf(uses);
        this.topUp = topUp;
        this.transferredM3 = transferredM3;
        this.stageVolume = stageVolume;
    }

    /**
     * The system as a whole: a day is full when every use was met, empty when nothing is left that could be drawn;
     * volumes include dead volume.
     */
    public BalanceResult whole() {
        return whole;
    }

    /** Use by use, in the order of the system. */
    public List<UseResult> uses() {
        return uses;
    }

    /** Water bought in. */
    public TopUpResult topUp() {
        return topUp;
    }

    /** Volume carried over the run by each transfer, in the order of the system [m&sup3;]. */
    public double transferredM3(int transfer) {
        return transferredM3[transfer];
    }

    /** Volume in a stage as each day ends, dead volume included [m&sup3;]; a new array. */
    public double[] stageVolumesM3(int stage) {
        return FixedVolume.toM3(stageVolume[stage]);
    }

    /**
     * Water bought in.
     *
     * @param ordered loads ordered
     * @param delivered loads that came within the run
     * @param volumeM3 let into the tank [m&sup3;]
     * @param cost price of the loads that came, in the site's currency
     */
    public record TopUpResult(int ordered, int delivered, double volumeM3, double cost) {
    }
}
