import birge from "../../../data/birge-1932/source.json" with { type: "json" };
import dicom from "../../../data/dicom-ps3-3/source.json" with { type: "json" };
import lazzerini from "../../../data/lazzerini-1996/source.json" with { type: "json" };
import vandeVoorde from "../../../data/vande-voorde-1969/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { faultAt, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { calibrateByFile } from "./calibrate-by-file.ts";
import { calibrateByKnown } from "./calibrate-by-known.ts";
import { type CalibrateInput, type CalibrateOutput, calibrateInput, calibrateOutput } from "./calibrate-input.ts";
import { impossibleMarks } from "./impossible-marks.ts";
import { scalesOfFile } from "./scales-of-file.ts";

const sources = sourcesOf([dicom, birge, lazzerini, vandeVoorde]);

/**
 * The scale of a film in mm per px, from known lengths marked on it or from what its file states.
 * @throws Refusal `calibration.missing` where there is neither; `input.impossible` for marks that coincide.
 * @source DICOM PS3.3, clauses 10.7 and C.8.11.7 (memory); plane geometry; docs/methods/calibrate
 */
export const calibrateTopic = defineTopic({
  name: "calibrate",
  version: 2,
  summary: "The scale of a film in mm per px, from known lengths on it or from its file.",
  input: calibrateInput,
  output: calibrateOutput,
  sources,
  compute: calibrate,
});

function calibrate(input: CalibrateInput): CalibrateOutput {
  const faults = impossibleMarks(input);
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot calibrate: a mark on the film is impossible", {}, faults);
  const fromFile = scalesOfFile(input);
  const [best, ...others] = fromFile;
  if (input.known.length > 0) return calibrateByKnown(input, fromFile);
  if (best !== undefined) return calibrateByFile(input, best, others);
  throw faultAt(
    "known",
    "no known length is marked and the file states no spacing; mark an object of known length (instrument, probe, " +
      "ruler); ratios and angles stay available",
    "calibration.missing",
  );
}
