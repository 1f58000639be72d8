import dicom from "../../../data/dicom-ps3-3/source.json" with { type: "json" };
import lazzerini from "../../../data/lazzerini-1996/source.json" with { type: "json" };
import vandeVoorde from "../../../data/vande-voorde-1969/source.json" with { type: "json" };
import { cautionsOfFields, cautionsOfFile, cautionsOfOthers } from "./calibrate-cautions.ts";
import type { CalibrateInput, CalibrateOutput } from "./calibrate-input.ts";
import { type FileScale, statedMagnification } from "./scales-of-file.ts";

/**
 * A film's scale from its file alone; its error isn't known, and so not given.
 * Takes the input, the scale to use, and the others that the file gives.
 * @source DICOM PS3.3, clauses 10.7 and C.8.11.7 (memory); docs/methods/calibrate C4, C5
 */
export function calibrateByFile(input: CalibrateInput, best: FileScale, others: readonly FileScale[]): CalibrateOutput {
  const mean = Math.sqrt(best.mmPerPx.column * best.mmPerPx.row);
  const why = "the file does not state how far its spacing may be off; only a known length on the film tells";
  const published = best.origin === "detectorSpacing" ? [lazzerini.id, vandeVoorde.id] : [];
  return {
    mmPerPx: best.mmPerPx,
    used: best.origin,
    basis: {
      formula: "Spacing from the file, the most trustworthy one that it states",
      assumptions: [assumptionOfOrigin(best, input)],
      sources: [dicom.id, ...published],
    },
    cautions: [...cautionsOfFile(best), ...cautionsOfOthers(mean, 0, others), ...cautionsOfFields(input)],
    notComputed: ["sigmaMmPerPx", "relativeSigma", "interval", "disagreement"].map((name) => ({ name, why })),
  };
}

function assumptionOfOrigin(scale: FileScale, input: CalibrateInput): string {
  switch (scale.origin) {
    case "pixelSpacingFiducial":
      return "The spacing was calibrated from an object on the film, and holds in that object's plane.";
    case "pixelSpacingGeometry":
      return "The spacing is already divided by the magnification; it is not divided again.";
    case "detectorSpacingOverMagnification":
      return `The spacing at the detector is divided by the magnification, ${statedMagnification(input)?.toFixed(4)}.`;
    case "detectorSpacing":
      return "The spacing is at the detector; no magnification is stated and none is taken out.";
    case "pixelSpacingOfUnknownOrigin":
      return "The stated spacing is taken as it stands; its plane is unknown.";
  }
}
