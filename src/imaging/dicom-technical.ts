import type { DataSet } from "dicom-parser";
import type { FilmTechnical, FilmWindow } from "./film-pixels.ts";

/** How stored samples become the values that a file's window speaks of: value = slope * (sample + offset) + intercept. */
export interface ModalityScale {
  readonly slope: number;
  readonly intercept: number;
  /** The value that a stored 0 stands for; 0 for unsigned files. */
  readonly offset: number;
}

/** The modality scale of a data set; a table has none, and nothing is given for it. */
export function modalityScaleOf(dataSet: DataSet, offset: number): ModalityScale | undefined {
  if (dataSet.elements.x00283000 !== undefined) return undefined;
  const slope = numberAt(dataSet, "x00281053") ?? 1;
  return { slope: slope === 0 ? 1 : slope, intercept: numberAt(dataSet, "x00281052") ?? 0, offset };
}

/**
 * What a data set says about how the film was made, from a closed list of attributes; nothing of the patient is read.
 * Takes the parsed data set and the offset of its samples. Gives the technical values that are present and possible.
 * @source DICOM PS3.3 C.8.11.7 and 10.7 spacing and magnification, C.11.1 modality LUT, C.11.2 window (memory)
 */
export function dicomTechnicalOf(dataSet: DataSet, offset: number): Omit<FilmTechnical, "wasColour"> {
  const scale = modalityScaleOf(dataSet, offset);
  const calibration = textAt(dataSet, "x00280a02");
  const magnification = numberAt(dataSet, "x00181114");
  return {
    sourceFormat: "dicom",
    lossy: textAt(dataSet, "x00282110") === "01",
    ...present("detectorSpacingMm", spacingAt(dataSet, "x00181164")),
    ...present("pixelSpacingMm", spacingAt(dataSet, "x00280030")),
    ...present("calibrationType", calibrationTypes[calibration ?? ""]),
    ...present("magnification", magnification !== undefined && magnification > 0 ? magnification : undefined),
    ...present("window", scale === undefined ? undefined : windowOf(dataSet, scale)),
    ...present("signedOffset", offset === 0 ? undefined : offset),
    ...present("modalityLut", modalityLutOf(scale)),
  };
}

const calibrationTypes: Readonly<Record<string, "fiducial" | "geometry">> = {
  FIDUCIAL: "fiducial",
  GEOMETRY: "geometry",
};

function modalityLutOf(scale: ModalityScale | undefined): FilmTechnical["modalityLut"] {
  if (scale === undefined) return "table";
  return scale.slope === 1 && scale.intercept === 0 ? undefined : "rescale";
}

const functions: Readonly<Record<string, FilmWindow["function"]>> = {
  LINEAR: "linear",
  LINEAR_EXACT: "linearExact",
  SIGMOID: "sigmoid",
};

/** The first window of the file, brought to the units of the samples as kept. */
function windowOf(dataSet: DataSet, scale: ModalityScale): FilmWindow | undefined {
  const center = numberAt(dataSet, "x00281050");
  const width = numberAt(dataSet, "x00281051");
  const shape = functions[textAt(dataSet, "x00281056") ?? "LINEAR"] ?? "linear";
  if (center === undefined || width === undefined || !(width > 0) || (shape === "linear" && width < 1))
    return undefined;
  const toSample = (value: number) => (value - scale.intercept) / scale.slope - scale.offset;
  // The half and the one in the linear formula count stored steps; under a slope only the exact form says the same.
  if (shape === "linear" && scale.slope !== 1 && width > 1)
    return { center: toSample(center - 0.5), width: (width - 1) / Math.abs(scale.slope), function: "linearExact" };
  return { center: toSample(center), width: width / Math.abs(scale.slope), function: shape };
}

function spacingAt(dataSet: DataSet, tag: string): readonly [number, number] | undefined {
  const row = numberAt(dataSet, tag, 0);
  const column = numberAt(dataSet, tag, 1);
  return row !== undefined && column !== undefined && row > 0 && column > 0 ? [row, column] : undefined;
}

/** The parser's own reading of numbers breaks on fewer values than asked for, which real files have. */
function numberAt(dataSet: DataSet, tag: string, index = 0): number | undefined {
  const text = dataSet.string(tag)?.split("\\")[index]?.trim() ?? "";
  const value = Number(text);
  return text !== "" && Number.isFinite(value) ? value : undefined;
}

const textAt = (dataSet: DataSet, tag: string): string | undefined => dataSet.string(tag)?.trim();

function present<Name extends string, Value>(name: Name, value: Value | undefined): { [name in Name]?: Value } {
  const pair: { [name in Name]?: Value } = {};
  if (value !== undefined) pair[name] = value;
  return pair;
}
