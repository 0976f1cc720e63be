package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.cover.CornerPlan;
import padwright.cover.CoverPlan;
import padwright.cover.LayerCounter;
import padwright.cover.WrapProof;
import padwright.cover.WrapReport;
import padwright.design.Defaults;
import padwright.design.Finding;
import padwright.design.Job;
import padwright.design.PadSpec;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Hole;
import padwright.dome.DomeAnalyst;
import padwright.dome.DomeReport;
import padwright.fastening.FittingPlan;
import padwright.fastening.Mounting;
import padwright.fastening.MountingPlanner;
import padwright.fastening.StapleDepths;
import padwright.fastening.StaplePlan;
import padwright.fastening.StaplePlanner;
import padwright.fastening.TongueStaples;
import padwright.geometry.Vec2;
import padwright.material.Catalogue;
import padwright.material.Screw;
import padwright.shape.PadShape;

/** Works out a whole part: design in, pattern set out. Has no state; safe to share. */
public final class PatternEngine {
  /** How far chords may leave the arcs of a cut line in the wrap proof, mm. */
  private static final double CHORD_ERROR = 0.01;

  private final Catalogue catalogue;

  public PatternEngine(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Every part of the job, in its order. */
  public PatternSet run(Job job) {
    return new PatternSet(job, job.parts().stream().map(this::run).toList());
  }

  /**
   * One part.
   *
   * @throws padwright.measure.InputRefused where the sizes asked for cannot be made at all
   */
  public PartResult run(PaddedPart part) {
    WrappedPad pad = (WrappedPad) part;
    PadBuild build = new PadBuild(pad, catalogue);
    PadSpec spec = build.spec();
    PadShape shape = build.shape();
    CoverPlan cover = build.developer().plan(spec.grip());
    double strain = cover.corners().stream().mapToDouble(CornerPlan::flapStrain).max().orElse(0);

    List<Vec2> trim = cover.trim().flattened(CHORD_ERROR);
    WrapReport wrap =
        WrapProof.check(
            trim, cover.skeleton(), cover.gussets(), cover.clips(), shape.ends(), strain);
    LayerCounter layers = new LayerCounter(trim, build.developer().skeleton());

    Defaults more = new Defaults();
    MountingPlanner mounter = new MountingPlanner(shape, spec, pad.host());
    Optional<Screw> screw = mounter.screw(catalogue.screws(), more);
    List<Hole> screws = mounter.positions(screw, more);
    List<Hole> holes = new ArrayList<>(pad.base().holes());
    holes.addAll(screws);
    FittingPlan fittings = FittingPlan.of(pad.fittings(), shape, spec);
    if (!fittings.cutOuts().isEmpty()) {
      more.note(
          "fittings.cutOuts",
          "sizes of the board's holes",
          "the covering turned through takes its thickness on each side",
          padwright.material.Status.OWN);
    }
    StaplePlan staples =
        new StaplePlanner(shape, spec, pad.kind(), pad.front())
            .plan(
                cover.corners(),
                layers,
                fittings.keepClear(holes),
                pad.staples().leg(),
                catalogue.staples());
    staples = new TongueStaples(fittings, shape, spec).after(staples, holes);
    if (pad.staples().leg().isEmpty() && staples.leg() > 0) {
      more.note(
          "staples.leg",
          FindingRules.text("%.0f mm", staples.leg()),
          StapleDepths.longestPassing(staples.legs(), spec.staple().id()).isPresent()
              ? "the longest that passes"
              : "the longest that stays clear of the foam",
          padwright.material.Status.OWN);
    }
    double standOff = spec.coverThickness() * FiguresMaker.cornerLayers(staples);
    Mounting mounting = mounter.plan(screw, screws, standOff);

    List<PatternPiece> pieces =
        FittingPieces.on(
            new PieceMaker(pad, spec, shape, cover, staples, mounting).pieces(), fittings, spec);
    Figures figures = FiguresMaker.of(spec, shape, cover, staples, pieces, standOff);
    List<Finding> findings = new ArrayList<>();
    FindingRules rules = new FindingRules(spec);
    rules.turnUnder(build.askedTurnUnder());
    rules.edge(shape);
    findings.addAll(HoleRules.of(pad.base().holes(), shape));
    findings.addAll(OutlineRules.of(shape));
    findings.addAll(RunRules.of(pad, spec, shape));
    rules.refusedCorners(build.developer().refusals());
    rules.wrap(wrap, cover, shape.ends());
    rules.corners(cover);
    rules.covering(pad, FiguresMaker.stretched(cover.cut(), spec).bounds());
    findings.addAll(FoamRules.of(spec, build.foamApart()));
    rules.opening(shape.bareGap(), build.dryFit());
    StapleRules stapling = new StapleRules(spec, shape);
    stapling.staples(staples);
    MountingRules mounts = new MountingRules(spec, shape);
    mounts.mounting(pad.host(), mounting, mounter, standOff);
    findings.addAll(rules.findings());
    findings.addAll(stapling.findings());
    findings.addAll(mounts.findings());
    findings.addAll(FittingRules.findings(pad, spec, shape, fittings, mounting, staples, figures));
    Optional<DomeReport> dome = DomeAnalyst.of(shape, spec, cover.corners());
    findings.addAll(DomeRules.findings(dome));
    findings.sort(java.util.Comparator.comparing(Finding::level));
    return new PartResult(
        pad,
        spec.withAssumptions(more.taken()),
        shape,
        cover,
        wrap,
        staples,
        mounting,
        figures,
        pieces,
        findings,
        dome);
  }
}
