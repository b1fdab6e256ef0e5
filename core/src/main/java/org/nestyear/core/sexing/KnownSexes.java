package org.nestyear.core.sexing;

import java.util.List;

/**
 * What is known of both sexes of a species before a lot is measured.
 *
 * @param male mean and spread of males; its weight is not read
 * @param female mean and spread of females; its weight is not read
 * @param betweenLots standard deviation of a lot's mean about the species' mean
 * @param femaleShare share of females before measuring, above 0 and below 1
 * @param worth how many cocoons that share is worth, 0 or more
 */
public record KnownSexes(Group male, Group female, double betweenLots, double femaleShare, double worth) {
    /** Steps of the share alone; numerical. */
    private static final int STEPS = 200;

    public KnownSexes {
        if (!(male.mean() < female.mean())
                || !(femaleShare > 0 && femaleShare < 1)
                || !(worth >= 0)
                || !(betweenLots >= 0)) {
            throw new IllegalArgumentException("females are the larger ones, and a share lies between 0 and 1");
        }
    }

    /** The groups with these known sizes and the share of females that the sizes speak for. */
    public GroupFit fit(List<Sized> sizes) {
        double cocoons = sizes.stream().mapToDouble(Sized::count).sum();
        GroupFit fit = with(femaleShare, cocoons);
        for (int i = 0; i < STEPS; i++) {
            fit = with((fit.large(sizes) + femaleShare * worth) / (cocoons + worth), cocoons);
        }
        return fit;
    }

    private GroupFit with(double share, double cocoons) {
        return new GroupFit(
                List.of(new Group(male.mean(), male.sd(), 1 - share), new Group(female.mean(), female.sd(), share)),
                0,
                1,
                cocoons);
    }
}
