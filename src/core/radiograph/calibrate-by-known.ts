import birge from "../../../data/birge-1932/source.json" with { type: "json" };
import { cautionsOfFields, cautionsOfImplied, cautionsOfKnown, cautionsOfOthers } from "./calibrate-cautions.ts";
import type { CalibrateInput, CalibrateOutput } from "./calibrate-input.ts";
import { foreshorteningOf } from "./foreshortening.ts";
import { reach95 } from "./interval-around.ts";
import { type ScaleOfKnown, scaleOfKnown } from "./scale-of-known.ts";
import type { FileScale } from "./scales-of-file.ts";

/**
 * A film's scale from known lengths marked on it, checked against each other and against the file.
 * Takes an input with at least one known length and no impossible mark, and the scales that its file gives.
 * @source plane geometry; docs/methods/calibrate C1, C3, C7
 */
export function calibrateByKnown(input: CalibrateInput, fromFile: readonly FileScale[]): CalibrateOutput {
  const shape = fromFile[0]?.mmPerPx ?? { column: 1, row: 1 };
  const scale = scaleOfKnown(input.known, shape, input.geometry);
  const foreshortening = foreshorteningOf(scale);
  const implied = impliedMagnification(input, scale);
  return {
    mmPerPx: scale.mmPerPx,
    sigmaMmPerPx: scale.meanMmPerPx * scale.relativeSigma,
    relativeSigma: scale.relativeSigma,
    ...intervalOf(scale),
    used: "knownLength",
    ...(implied === undefined ? {} : { impliedMagnification: implied }),
    ...(scale.disagreement === undefined ? {} : { disagreement: scale.disagreement }),
    ...(foreshortening === undefined ? {} : { foreshortening }),
    basis: {
      formula: "Known length over its length on the film; several: inverse-variance mean of px per mm",
      assumptions: assumptionsOfKnown(input, fromFile),
      sources: foreshortening === undefined ? [] : [birge.id],
    },
    cautions: [
      ...cautionsOfKnown(scale, foreshortening),
      ...cautionsOfOthers(scale.meanMmPerPx, scale.relativeSigma, fromFile),
      ...cautionsOfImplied(implied, scale.relativeSigma),
      ...cautionsOfFields(input),
    ],
    notComputed: [
      ...missingInterval(scale),
      ...(scale.disagreement === undefined
        ? [{ name: "disagreement", why: "only one known length is marked; a second one would check it" }]
        : []),
    ],
  };
}

/** 95 % of px per mm, turned over; px per mm is what the clicks make normal. */
function intervalOf({ meanMmPerPx, relativeSigma }: ScaleOfKnown): Pick<CalibrateOutput, "interval"> {
  const reach = reach95 * relativeSigma;
  if (reach >= 1) return {};
  return { interval: { low: meanMmPerPx / (1 + reach), high: meanMmPerPx / (1 - reach), level: 0.95 } };
}

function missingInterval(scale: ScaleOfKnown): CalibrateOutput["notComputed"] {
  if (intervalOf(scale).interval !== undefined) return [];
  return [{ name: "interval", why: "the click error is as large as the known length, so the scale has no upper end" }];
}

function impliedMagnification(input: CalibrateInput, scale: ScaleOfKnown): number | undefined {
  if (input.detectorSpacingMm === undefined) return undefined;
  const [row, column] = input.detectorSpacingMm;
  return Math.sqrt(row * column) / scale.meanMmPerPx;
}

function assumptionsOfKnown(input: CalibrateInput, fromFile: readonly FileScale[]): string[] {
  const clicks = [...new Set(input.known.map((one) => one.sigmaPx))].join(" or ");
  const assumptions = [
    `Each click errs by ${clicks} px (standard deviation) on each axis, independently.`,
    "The known object lies in the plane of what is measured with the scale, and at right angles to the beam.",
    fromFile.length === 0
      ? "Pixels are square: the file states no spacing."
      : "The ratio of column to row spacing is the file's.",
  ];
  if (input.known.some((one) => one.kind === "sphere")) assumptions.push(assumptionOfSphere(input));
  return assumptions;
}

const assumptionOfSphere = (input: CalibrateInput): string =>
  input.geometry === undefined
    ? "A sphere throws its own diameter (parallel rays), marked across the narrowest way."
    : "A sphere throws the shadow of its tangent rays, on the central ray.";
