import type { DataSet } from "dicom-parser";
import type { FilmTechnical, FilmWindow } from "../film-pixels.ts";
import { lookupTableOf } from "./lookup-table.ts";
import { type TableWindow, windowOfTable } from "./table-window.ts";

/** How stored samples become the values that a file's window speaks of: value = slope * (sample + offset) + intercept. */
interface ModalityScale {
  readonly slope: number;
  readonly intercept: number;
  /** The value that a stored 0 stands for; 0 for unsigned files. */
  readonly offset: number;
}

/** What is known of the samples before the data set is asked how the film was made. */
export interface SampleOrigin {
  /** The value that a stored 0 stands for; 0 for unsigned files, and once a modality table was applied. */
  readonly offset: number;
  readonly modalityTable: boolean;
  /** The way of packing kept less than it was given. */
  readonly lossy: boolean;
}

/** The modality scale of a data set; none but the identity where a table has been applied. */
function modalityScaleOf(dataSet: DataSet, { offset, modalityTable }: SampleOrigin): ModalityScale {
  if (modalityTable) return { slope: 1, intercept: 0, offset: 0 };
  const slope = numberAt(dataSet, "x00281053") ?? 1;
  return { slope: slope === 0 ? 1 : slope, intercept: numberAt(dataSet, "x00281052") ?? 0, offset };
}

/**
 * What a data set says about how the film was made, from a closed list of attributes; nothing of the patient is read.
 * Takes the parsed data set and what is known of its samples. Gives the technical values that are present and possible.
 * @source DICOM PS3.3 C.8.11.7 and 10.7 spacing and magnification, C.11.1 modality LUT, C.11.2 window (memory)
 */
export function dicomTechnicalOf(dataSet: DataSet, origin: SampleOrigin): Omit<FilmTechnical, "wasColour"> {
  const { offset } = origin;
  const scale = modalityScaleOf(dataSet, origin);
  const calibration = textAt(dataSet, "x00280a02");
  const magnification = numberAt(dataSet, "x00181114");
  return {
    sourceFormat: "dicom",
    lossy: origin.lossy || textAt(dataSet, "x00282110") === "01",
    ...present("detectorSpacingMm", spacingAt(dataSet, "x00181164")),
    ...present("pixelSpacingMm", spacingAt(dataSet, "x00280030")),
    ...present("calibrationType", calibrationTypes[calibration ?? ""]),
    ...present("magnification", magnification !== undefined && magnification > 0 ? magnification : undefined),
    ...present("window", windowOf(dataSet, scale) ?? inSamples(voiTableWindowOf(dataSet)?.window, scale)),
    ...present("signedOffset", offset === 0 ? undefined : offset),
    ...present("modalityLut", origin.modalityTable ? "table" : rescaleOf(scale)),
  };
}

/**
 * Whether bright and dark are turned round by what the file asks for: by a falling rescale, or by a falling table of
 * greys where no window is given.
 */
export function turnsGreys(dataSet: DataSet, origin: SampleOrigin): boolean {
  const scale = modalityScaleOf(dataSet, origin);
  const byTable = windowOf(dataSet, scale) === undefined && voiTableWindowOf(dataSet)?.falls === true;
  return scale.slope < 0 !== byTable;
}

function voiTableWindowOf(dataSet: DataSet): TableWindow | undefined {
  const item = dataSet.elements.x00283010?.items?.[0]?.dataSet;
  const table = item && lookupTableOf(item, "x00283002", "x00283006");
  return table && windowOfTable(table);
}

const rescaleOf = ({ slope, intercept }: ModalityScale): "rescale" | undefined =>
  slope === 1 && intercept === 0 ? undefined : "rescale";

const calibrationTypes: Readonly<Record<string, "fiducial" | "geometry">> = {
  FIDUCIAL: "fiducial",
  GEOMETRY: "geometry",
};

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
  // The half and the one in the linear formula count stored steps; under a slope only the exact form says the same.
  if (shape === "linear" && scale.slope !== 1 && width > 1)
    return inSamples({ center: center - 0.5, width: width - 1, function: "linearExact" }, scale);
  return inSamples({ center, width, function: shape }, scale);
}

/** A window of values as one of samples. */
function inSamples(
  window: FilmWindow | undefined,
  { slope, intercept, offset }: ModalityScale,
): FilmWindow | undefined {
  return (
    window && { ...window, center: (window.center - intercept) / slope - offset, width: window.width / Math.abs(slope) }
  );
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
