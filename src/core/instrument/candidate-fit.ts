import { intervalAround, reach95 } from "../radiograph/interval-around.ts";
import type { FitInput, FitOutput } from "./fit-input.ts";
import { diameterAt, type InstrumentShape } from "./instrument-shape.ts";
import { diameterSigmaOf, growthAt, lengthFromWidth } from "./length-from-width.ts";
import type { Measured } from "./measured.ts";

/** How one candidate fits, as the output has it. */
export type CandidateFit = FitOutput["candidates"][number];

type Fragment = FitInput["fragment"];

/** 95 % of distances lie below this, by how many measures were compared: square roots of chi-square quantiles. */
const limits = [0, reach95, 2.4477];

/** A difference between what was measured and what the candidate has, in mm. */
interface Difference {
  readonly name: "tipDiameterMm" | "brokenEndDiameterMm";
  readonly measured: number;
  readonly expected: number;
  /** Variance of the measuring alone, mm squared. */
  readonly variance: number;
}

/**
 * How a fragment fits one candidate.
 * Takes the fragment, the candidate's name and shape, and the standard deviation of its diameter, or undefined.
 * Gives the misfit in standard deviations; one error of the instrument's diameter is shared by both ends.
 * @source least squares with a shared error (plane algebra); docs/methods/fit C2, C3
 */
export function candidateFit(
  fragment: Fragment,
  { name, shape }: { name: string; shape: InstrumentShape },
  diameterSigmaMm: number | undefined,
): CandidateFit {
  const impossible = tooLong(fragment.lengthMm, shape);
  if (impossible !== undefined) return { name, consistent: false, compared: [], impossible };
  const own = diameterSigmaMm ?? diameterSigmaOf(shape);
  const differences = differencesOf(fragment, shape);
  const misfitSd = misfitOf(differences, own);
  const width = fragment.brokenEndDiameterMm;
  const length = width === undefined ? undefined : lengthFromWidth(shape, width, own);
  return {
    name,
    misfitSd,
    consistent: misfitSd <= (limits[differences.length] ?? 0),
    compared: differences.map((one) => ({
      name: one.name,
      measuredMm: one.measured,
      expectedMm: one.expected,
      sigmaMm: Math.sqrt(one.variance + own ** 2),
    })),
    ...(length === undefined ? {} : { lengthFromWidth: writtenLength(length) }),
  };
}

function tooLong(length: Measured | undefined, { lengthMm }: InstrumentShape): string | undefined {
  if (length === undefined || lengthMm === undefined || length.value <= lengthMm + reach95 * length.sigma)
    return undefined;
  return `the fragment of ${length.value} mm is longer than the instrument, ${lengthMm} mm`;
}

function differencesOf(fragment: Fragment, shape: InstrumentShape): Difference[] {
  const { tipDiameterMm: tip, brokenEndDiameterMm: width, lengthMm: length } = fragment;
  const atTip: Difference[] =
    tip === undefined
      ? []
      : [{ name: "tipDiameterMm", measured: tip.value, expected: shape.tipMm, variance: tip.sigma ** 2 }];
  if (width === undefined) return atTip;
  const end = length === undefined ? endOfUnknownLength(width, shape) : endAt(width, length, shape);
  return end === undefined ? atTip : [...atTip, end];
}

function endAt(width: Measured, length: Measured, shape: InstrumentShape): Difference {
  const growth = growthAt(shape, length.value, length.sigma);
  return {
    name: "brokenEndDiameterMm",
    measured: width.value,
    expected: diameterAt(shape, length.value),
    variance: width.sigma ** 2 + (growth * length.sigma) ** 2,
  };
}

/** Without a length a broken end speaks against an instrument only where its width lies outside all that it has. */
function endOfUnknownLength(width: Measured, { stations }: InstrumentShape): Difference | undefined {
  const diameters = stations.map(({ diameterMm }) => diameterMm);
  const nearest = Math.min(Math.max(width.value, Math.min(...diameters)), Math.max(...diameters));
  if (nearest === width.value) return undefined;
  return { name: "brokenEndDiameterMm", measured: width.value, expected: nearest, variance: width.sigma ** 2 };
}

/** The distance of one or two differences from none, the instrument's own error being the same in both. */
function misfitOf([first, second]: readonly Difference[], ownSigmaMm: number): number {
  if (first === undefined) return 0;
  const [a, own] = [first.measured - first.expected, ownSigmaMm ** 2];
  if (second === undefined) return Math.abs(a) / Math.sqrt(first.variance + own);
  const b = second.measured - second.expected;
  const [aa, bb] = [first.variance + own, second.variance + own];
  return Math.sqrt((a * a * bb - 2 * a * b * own + b * b * aa) / (aa * bb - own * own));
}

function writtenLength({ value, sigma }: Measured): NonNullable<CandidateFit["lengthFromWidth"]> {
  const around = intervalAround(value, sigma);
  return { mm: value, sigmaMm: sigma, interval: { ...around, low: Math.max(0, around.low) } };
}
