package org.roofspring.economy.stages;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.roofspring.economy.internal.Checks;

/**
 * The order of building that gives most reliability for the money, and the best that a budget buys.
 *
 * <p>Money comes bit by bit, and people live with what is there until the next option is paid. So the order is best
 * that
 * makes the mean reliability over the money spent as great as it can be: the greatest sum over the steps of
 * (reliability
 * so far) times (cost of what comes next). It is found exactly, by dynamic programming over the sets of options (M.
 * Held
 * and R. M. Karp, A dynamic programming approach to sequencing problems, 1962, from memory), so for no more than
 * {@value #MOST_OPTIONS} options. What a budget buys is found by looking at every set. Of orders that are equally good,
 * the one that follows the given order is taken; of sets, the cheapest.
 */
public final class StagePlan {
    /** With more, the sets become too many to run the storage for each: 2^12 = 4096. */
    public static final int MOST_OPTIONS = 12;

    private final List<StageOption> options;
    private final double[] reliability;
    private final double[] costCur;

    private StagePlan(List<StageOption> options, double[] reliability, double[] costCur) {
        this.options = options;
        this.reliability = reliability;
        this.costCur = costCur;
    }

    /**
     * A set of options that is built.
     *
     * @param options     indices, in ascending order
     * @param costCur     of all of them [currency]
     * @param reliability with all of them [-]
     */
    public record Bought(SortedSet<Integer> options, double costCur, double reliability) {
        public Bought {
            options = Collections.unmodifiableSortedSet(new TreeSet<>(options));
        }
    }

    /**
     * A step of the order.
     *
     * @param option      index of what is built
     * @param spentCur    up to and with it [currency]
     * @param reliability once it is there [-]
     */
    public record Step(int option, double spentCur, double reliability) {
    }

    /**
     * Asks for the reliability of every set that can be built, once each.
     *
     * @param options     at most {@value #MOST_OPTIONS}; none is a plan without steps
     * @param reliability of a set
     * @param cancelled   asked before each set
     * @throws IllegalArgumentException when there are too many, when options wait for each other in a circle or for one
     *                                  that is not there, or when a reliability is no share
     */
    public static StagePlan of(List<StageOption> options, Reliability reliability, BooleanSupplier cancelled) {
        List<StageOption> all = Checks.list("options", options);
        Checks.present("reliability", reliability);
        Checks.within("number of options", all.size(), 0, MOST_OPTIONS);
        for (StageOption option : all) {
            for (int first : option.after()) {
                Checks.within("option that " + option.name() + " must come after", first, 0, all.size() - 1);
            }
        }
        int sets = 1 << all.size();
        double[] known = new double[sets];
        double[] cost = new double[sets];
        for (int set = 0; set < sets; set++) {
            known[set] = Double.NaN;
            if (canStand(all, set)) {
                if (cancelled.getAsBoolean()) {
                    throw new CancellationException();
                }
                SortedSet<Integer> built = members(set);
                known[set] = Checks.within("reliability with options " + built, reliability.of(built), 0, 1);
                cost[set] = built.stream().mapToDouble(option -> all.get(option).costCur()).sum();
            }
        }
        StagePlan plan = new StagePlan(all, known, cost);
        if (plan.order().size() < all.size()) {
            throw new IllegalArgumentException("options must not wait for each other in a circle");
        }
        return plan;
    }

    /** Whether every option of a set has what it needs in the set. */
    private static boolean canStand(List<StageOption> options, int set) {
        return members(set).stream().allMatch(option -> options.get(option).after().stream()
                .allMatch(first -> first != option && (set >> first & 1) == 1));
    }

    private static SortedSet<Integer> members(int set) {
        SortedSet<Integer> members = new TreeSet<>();
        for (int option = 0; set >> option != 0; option++) {
            if ((set >> option & 1) == 1) {
                members.add(option);
            }
        }
        return members;
    }

    /** The options that were weighed. */
    public List<StageOption> options() {
        return options;
    }

    /** The best order in which to build all options. */
    public List<Step> order() {
        int sets = reliability.length;
        double[] best = new double[sets];
        int[] last = new int[sets];
        for (int set = 1; set < sets; set++) {
            best[set] = Double.NEGATIVE_INFINITY;
            last[set] = -1;
            for (int option = 0; option < options.size() && !Double.isNaN(reliability[set]); option++) {
                int before = set & ~(1 << option);
                if (before == set || Double.isNaN(reliability[before]) || best[before] < 0) {
                    continue;
                }
                double area = best[before] + reliability[before] * options.get(option).costCur();
                if (area >= best[set]) {
                    best[set] = area;
                    last[set] = option;
                }
            }
        }
        List<Step> steps = new ArrayList<>();
        for (int set = sets - 1; set > 0 && last[set] >= 0; set &= ~(1 << last[set])) {
            steps.add(new Step(last[set], costCur[set], reliability[set]));
        }
        Collections.reverse(steps);
        return steps;
    }

    /** What there is before anything is built. */
    public double reliabilityAtStart() {
        return reliability[0];
    }

    /**
     * The set of greatest reliability that a budget buys; of equal ones the cheapest.
     *
     * @param budgetCur 0 to 1e15 [currency]
     */
    public Bought bestFor(double budgetCur) {
        Checks.within("budget (budgetCur)", budgetCur, 0, 1e15);
        return all().filter(bought -> bought.costCur() <= budgetCur)
                .max(Comparator.comparingDouble(Bought::reliability)
                        .thenComparing(Comparator.comparingDouble(Bought::costCur).reversed())).orElseThrow();
    }

    /** The sets that nothing cheaper, or as cheap, beats: what each budget buys, by rising cost. */
    public List<Bought> frontier() {
        List<Bought> sorted = all().sorted(Comparator.comparingDouble(Bought::costCur)
                .thenComparing(Comparator.comparingDouble(Bought::reliability).reversed())).toList();
        List<Bought> frontier = new ArrayList<>();
        for (Bought bought : sorted) {
            if (frontier.isEmpty() || bought.reliability() > frontier.getLast().reliability()) {
                frontier.add(bought);
            }
        }
        return frontier;
    }

    private Stream<Bought> all() {
        return IntStream.range(0, reliability.length).filter(set -> !Double.isNaN(reliability[set]))
                .mapToObj(set -> new Bought(members(set), costCur[set], reliability[set]));
    }
}
