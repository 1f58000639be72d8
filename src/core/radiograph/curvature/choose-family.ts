import { chiSquareQuantile } from "../../statistics/chi-square-quantile.ts";
import { lossOf } from "./agreement-of.ts";
import { type Family, families, parameterKinds } from "./family.ts";
import { type FamilyFit, fitFamily } from "./fit-family.ts";
import { nearest } from "./project.ts";
import { startsOf } from "./starts.ts";
import { retraced, type Trace, thinned } from "./trace.ts";

/** Every family that the points can tell apart, the best first, and how much each is worth beside the best. */
export interface Choice {
  readonly trace: Trace;
  /** Sorted by score; never empty. */
  readonly fits: readonly ScoredFit[];
  /** The standard deviation of a point by which the families were compared, in mm. */
  readonly sigmaMm: number;
}

/** A fit, its score (lower is better) and its weight: 1 shared out among all of them. */
interface ScoredFit {
  readonly fit: FamilyFit;
  readonly score: number;
  readonly weight: number;
}

/** No coordinate is taken to be truer than this, in mm. */
export const finestSigmaMm = 0.0005;
/** Points that a fit looks at while families are compared; the chosen ones are fitted to all points. */
const comparedPoints = 90;
const scoutPoints = 36;
/** Gain of a round, as a share of the squares, below which a fit has settled. */
const settled = 1e-7;
/** A second bend can lie anywhere, so that chance has many tries to invent one: it must earn this much more. */
const secondBend = 8;
/** Share of the best family's weight under which a family is left out. */
const negligible = 0.002;

/**
 * The families laid through a trace and compared by a penalised score: squares in units of the noise, plus the logarithm
 * of the number of residuals for each parameter.
 * Takes the stated standard deviation of a point in mm, or undefined to have it estimated from the fits.
 * @source G. Schwarz, "Estimating the dimension of a model", Ann Stat 1978;6:461-464 (memory); docs/methods/curvature.md C5
 */
export function chooseFamily(raw: Trace, statedSigmaMm: number | undefined): Choice {
  const { trace: few, size } = thinned(raw, comparedPoints);
  const scout = bestOf(
    few,
    families.filter((family) => family.bends < 2 && !family.ramped),
  );
  const ready = scout === undefined ? few : retraced(few, scout.projection.places);
  const compared = fitAll(ready, families);
  const first = scored(compared, statedSigmaMm, size);
  if (size === 1) return { ...first, trace: ready };
  const all = onAllPoints(raw, first);
  return { ...scored(all.fits, statedSigmaMm, 1), trace: all.trace };
}

function fitAll(trace: Trace, tried: readonly Family[]): FamilyFit[] {
  return tried.flatMap((family) => {
    const fit = fitBest(trace, family);
    return fit === undefined ? [] : [fit];
  });
}

function bestOf(trace: Trace, tried: readonly Family[]): FamilyFit | undefined {
  return fitAll(trace, tried).sort((a, b) => a.projection.squares - b.projection.squares)[0];
}

/** The best fit of a family from all its starts: many short runs on few points, then two long ones. */
function fitBest(trace: Trace, family: Family): FamilyFit | undefined {
  const residuals = trace.points.length * trace.anchor.across;
  if (parameterKinds(family, trace.anchor.across).length >= residuals) return undefined;
  const scoutTrace = thinned(trace, scoutPoints).trace;
  const scouts = startsOf(family, trace)
    .flatMap((start) => fitFamily(family, atPlacesOf(trace, scoutTrace), start, { rounds: 4, settled }) ?? [])
    .sort((a, b) => a.projection.squares - b.projection.squares)
    .slice(0, 2);
  const fits = scouts.flatMap((scout) => fitFamily(family, trace, scout.parameters, { rounds: 40, settled }) ?? []);
  return fits.sort((a, b) => a.projection.squares - b.projection.squares)[0];
}

/** Thinning measures its own length along the points; the distances of the finer trace are kept instead. */
function atPlacesOf(trace: Trace, few: Trace): Trace {
  const stretch = trace.lengthMm / few.lengthMm;
  return { ...few, along: few.along.map((s) => s * stretch), lengthMm: trace.lengthMm };
}

function scored(fits: readonly FamilyFit[], statedSigmaMm: number | undefined, size: number): Omit<Choice, "trace"> {
  const sigmaMm = comparedSigma(fits, statedSigmaMm, size) * Math.sqrt(lossOfNearest(fits));
  const scores = fits.map((fit) => {
    const count = fit.projection.residuals.length;
    return {
      fit,
      score:
        fit.projection.squares / sigmaMm ** 2 +
        fit.parameters.length * Math.log(count) +
        secondBend * Math.max(0, fit.family.bends - 1),
    };
  });
  const best = Math.min(...scores.map(({ score }) => score));
  const kept = scores
    .map((one) => ({ ...one, share: Math.exp((best - one.score) / 2) }))
    .filter(({ share }) => share >= negligible)
    .sort((a, b) => a.score - b.score);
  const total = kept.reduce((sum, { share }) => sum + share, 0);
  return { sigmaMm, fits: kept.map(({ fit, score, share }) => ({ fit, score, weight: share / total })) };
}

/** How many residuals say no more than one, by the family that comes nearest: what it leaves is noise and not shape. */
function lossOfNearest(fits: readonly FamilyFit[]): number {
  const spare = (fit: FamilyFit): number => fit.projection.squares / Math.max(1, fit.freedom);
  const [nearestFit] = [...fits].sort((a, b) => spare(a) - spare(b));
  return nearestFit === undefined ? 1 : lossOf(nearestFit);
}

/**
 * The noise by which families are compared. Stated: what was stated, unless no family comes so near. Not stated: the
 * largest noise that the best family still allows, because with few points a family can fit by luck.
 */
function comparedSigma(fits: readonly FamilyFit[], statedSigmaMm: number | undefined, size: number): number {
  const free = fits.filter((fit) => fit.freedom > 0);
  if (statedSigmaMm !== undefined) {
    const least = Math.min(...free.map((fit) => fit.projection.squares / fit.freedom));
    return Math.max(statedSigmaMm / Math.sqrt(size), Math.sqrt(least), finestSigmaMm);
  }
  const most = free.map((fit) => fit.projection.squares / chiSquareQuantile(fit.freedom, -1.645));
  return Math.max(Math.sqrt(Math.min(...most)), finestSigmaMm);
}

/** The families still in question, fitted to every point. */
function onAllPoints(raw: Trace, choice: Omit<Choice, "trace">): { trace: Trace; fits: FamilyFit[] } {
  const [best] = choice.fits;
  if (best === undefined) throw new RangeError("some family always fits");
  const { course, projection } = best.fit;
  const span = projection.places.length - 1;
  const near = raw.points.map((point, index) => {
    const guess = projection.places[Math.round((index / (raw.points.length - 1)) * span)] ?? 0;
    return nearest(course, point, guess).place;
  });
  const first = near[0] ?? 0;
  const trace: Trace = { ...raw, along: near.map((s) => s - first), lengthMm: Math.max(...near) - first };
  const fits = choice.fits.flatMap(
    // All points make the course a little longer or shorter: a bend at the limit of what is allowed may have to start anew.
    ({ fit }) =>
      fitFamily(fit.family, trace, fit.parameters, { rounds: 8, settled }) ?? fitBest(trace, fit.family) ?? [],
  );
  return { trace, fits: fits.length > 0 ? fits : fitAll(trace, families) };
}
