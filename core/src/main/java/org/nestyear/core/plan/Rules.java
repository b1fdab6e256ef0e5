package org.nestyear.core.plan;

import java.util.List;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.rule.AddTunnelsJob;
import org.nestyear.core.advice.rule.AskAgainJob;
import org.nestyear.core.advice.rule.AuditJob;
import org.nestyear.core.advice.rule.BorrowedFinding;
import org.nestyear.core.advice.rule.ChillFinding;
import org.nestyear.core.advice.rule.ColdSpellJob;
import org.nestyear.core.advice.rule.CountPlugsJob;
import org.nestyear.core.advice.rule.EdgeFinding;
import org.nestyear.core.advice.rule.FewDaughtersFinding;
import org.nestyear.core.advice.rule.FewYearsFinding;
import org.nestyear.core.advice.rule.FlowersFinding;
import org.nestyear.core.advice.rule.FridgeFinding;
import org.nestyear.core.advice.rule.GapsFinding;
import org.nestyear.core.advice.rule.HouseJob;
import org.nestyear.core.advice.rule.IntoTheColdJob;
import org.nestyear.core.advice.rule.LookOverJob;
import org.nestyear.core.advice.rule.LostInStoreFinding;
import org.nestyear.core.advice.rule.MalesFinding;
import org.nestyear.core.advice.rule.MissedBloomFinding;
import org.nestyear.core.advice.rule.MudJob;
import org.nestyear.core.advice.rule.NarrowTunnelsFinding;
import org.nestyear.core.advice.rule.NeighbourhoodFinding;
import org.nestyear.core.advice.rule.NestsInJob;
import org.nestyear.core.advice.rule.NoTrialFinding;
import org.nestyear.core.advice.rule.NotAdultFinding;
import org.nestyear.core.advice.rule.OriginFinding;
import org.nestyear.core.advice.rule.OtherBloomFinding;
import org.nestyear.core.advice.rule.PastBloomFinding;
import org.nestyear.core.advice.rule.ProofBySightJob;
import org.nestyear.core.advice.rule.PutOutJob;
import org.nestyear.core.advice.rule.SecondReleaseJob;
import org.nestyear.core.advice.rule.SmallStockFinding;
import org.nestyear.core.advice.rule.SplitFinding;
import org.nestyear.core.advice.rule.ToldBloomFinding;
import org.nestyear.core.advice.rule.TunnelsFinding;
import org.nestyear.core.advice.rule.WatchJob;

/** All rules from release to the next winter's cold, in the order in which equals are shown. */
public final class Rules {
    private Rules() {}

    /** The rules that make jobs. */
    public static List<JobRule> jobs() {
        return List.of(
                new LookOverJob(),
                new HouseJob(),
                new AddTunnelsJob(),
                new AskAgainJob(),
                new PutOutJob(),
                new ColdSpellJob(),
                new WatchJob(),
                new MudJob(),
                new SecondReleaseJob(),
                new AuditJob(),
                new CountPlugsJob(),
                new NestsInJob(),
                new ProofBySightJob(),
                new IntoTheColdJob());
    }

    /** The rules that make findings. */
    public static List<FindingRule> findings() {
        return List.of(
                new MalesFinding(),
                new TunnelsFinding(),
                new FridgeFinding(),
                new ChillFinding(),
                new LostInStoreFinding(),
                new MissedBloomFinding(),
                new EdgeFinding(),
                new FewYearsFinding(),
                new PastBloomFinding(),
                new ToldBloomFinding(),
                new OtherBloomFinding(),
                new FlowersFinding(),
                new SmallStockFinding(),
                new FewDaughtersFinding(),
                new NotAdultFinding(),
                new NarrowTunnelsFinding(),
                new OriginFinding(),
                new GapsFinding(),
                new SplitFinding(),
                new BorrowedFinding(),
                new NeighbourhoodFinding(),
                new NoTrialFinding());
    }
}
