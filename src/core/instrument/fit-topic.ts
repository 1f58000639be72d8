import iso from "../../../data/iso-3630-1/source.json" with { type: "json" };
import zinelis from "../../../data/zinelis-2002/source.json" with { type: "json" };
import { type Basis, sourcesOf } from "../basis.ts";
import { reach95 } from "../radiograph/interval-around.ts";
import { type Fault, faultAt, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { type CandidateFit, candidateFit } from "./candidate-fit.ts";
import { type FitInput, type FitOutput, fitInput, fitOutput } from "./fit-input.ts";
import { instrumentFaults } from "./instrument-faults.ts";
import { instrumentShape } from "./instrument-shape.ts";

const sources = sourcesOf([iso, zinelis]);

/**
 * Which of the instruments that were used a fragment could be from, each with its misfit.
 * @throws Refusal `input.impossible` for an instrument that can't be, a broken end thinner than the fragment's tip, a
 * fragment longer than every candidate; `input.notDeterminable` without a diameter.
 * @source ISO 3630-1 (memory); docs/methods/fit.md
 */
export const fitTopic = defineTopic({
  name: "fit",
  version: 1,
  summary: "Which of the instruments that were used a measured fragment could be from.",
  input: fitInput,
  output: fitOutput,
  sources,
  compute: fit,
});

function fit(input: FitInput): FitOutput {
  checkFragment(input);
  const named = input.candidates.map(({ name, instrument }, index) => ({
    name: name ?? `instrument ${index + 1}`,
    shape: instrumentShape(instrument),
  }));
  const fits = named.map((candidate) => candidateFit(input.fragment, candidate, input.diameterSigmaMm));
  if (fits.every(({ impossible }) => impossible !== undefined))
    throw faultAt(
      "fragment.lengthMm",
      `no candidate is as long: ${fits.map(({ impossible }) => impossible).join("; ")}`,
    );
  return {
    candidates: fits.toSorted((a, b) => worth(a) - worth(b)),
    basis: basisOf(input),
    cautions: cautionsOf(input, fits),
    notComputed: notComputedOf(input, fits),
  };
}

const worth = ({ misfitSd }: CandidateFit): number => misfitSd ?? Number.POSITIVE_INFINITY;

function checkFragment({ fragment, candidates }: FitInput): void {
  const { tipDiameterMm: tip, brokenEndDiameterMm: end } = fragment;
  if (tip === undefined && end === undefined)
    throw faultAt(
      "fragment",
      "holds no diameter; a length alone fits every instrument that is longer: measure the broken end or the tip",
      "input.notDeterminable",
    );
  const thinner: Fault[] =
    tip !== undefined && end !== undefined && end.value < tip.value - reach95 * Math.hypot(tip.sigma, end.sigma)
      ? [{ path: "fragment.brokenEndDiameterMm", says: `${end.value} is thinner than the tip, ${tip.value}` }]
      : [];
  const unlikely = candidates.flatMap(({ instrument }, index) =>
    instrumentFaults(instrument, `candidates[${index}].instrument`),
  );
  const faults = [...thinner, ...unlikely];
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot fit the fragment: what is told can't be", {}, faults);
}

function basisOf({ diameterSigmaMm }: FitInput): Basis {
  return {
    formula:
      "Distance of the measured diameters from those of the candidate, in standard deviations; l = (w - d0) / taper",
    assumptions: [
      diameterSigmaMm === undefined
        ? "A diameter lies about the nominal one with a standard deviation of the tolerance / 1.96."
        : `A diameter lies about the nominal one with a standard deviation of ${diameterSigmaMm} mm, as given.`,
      "An instrument is too thick or too thin by the same amount at both ends.",
      "The errors of measuring are normal, and independent of each other.",
      "The fragment is the apical end of its instrument, whole to the tip, neither unwound nor worn.",
    ],
    sources: sources.map(({ id }) => id),
  };
}

/** A length from a width with a standard deviation from here on says little, mm. */
const saysLittleMm = 1;

function cautionsOf({ fragment }: FitInput, fits: readonly CandidateFit[]): string[] {
  const consistent = fits.filter((one) => one.consistent);
  const vague = fits.filter(({ lengthFromWidth: length }) => length !== undefined && length.sigmaMm >= saysLittleMm);
  return [
    ...(consistent.length === 0 ? ["The measures are consistent with none of the candidates."] : []),
    ...(consistent.length > 1
      ? [`The measures don't decide between ${consistent.map(({ name }) => name).join(", ")}.`]
      : []),
    ...(fragment.tipDiameterMm === undefined
      ? []
      : [
          "A real tip is shaped and thinner than the diameter that its taper has there: measure where the taper begins.",
        ]),
    ...(fragment.lengthMm === undefined
      ? ["Without its length the fragment's broken end speaks against an instrument only where that has no such width."]
      : []),
    ...(vague.length > 0
      ? [
          `A slight taper turns small errors of a width into 1 mm of length and more (${vague.map(({ name }) => name).join(", ")}): measure the length itself.`,
        ]
      : []),
  ];
}

function notComputedOf({ fragment }: FitInput, fits: readonly CandidateFit[]) {
  if (fragment.brokenEndDiameterMm === undefined)
    return [{ name: "lengthFromWidth", why: "the broken end was not measured" }];
  return fits.flatMap(({ name, lengthFromWidth, impossible }) => {
    if (lengthFromWidth !== undefined) return [];
    const why = impossible ?? "it has that width at many places, or does not widen there: not determinable";
    return [{ name: `lengthFromWidth of ${name}`, why }];
  });
}
