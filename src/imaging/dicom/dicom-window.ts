import type { DataSet } from "dicom-parser";
import type { FilmStatement, FilmWindow } from "../film-pixels.ts";
import { isSaid, numberAt, textAt } from "./dicom-values.ts";
import { lookupTableOf } from "./lookup-table.ts";
import { windowOfTable } from "./table-window.ts";

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

/** How a data set wants its samples shown. */
export interface DicomLook {
  readonly window?: FilmWindow;
  /** The values are samples under a rescale that is not the identity. */
  readonly rescaled: boolean;
  /** Bright and dark are turned round: by a falling rescale, or by a falling table of greys where no window is given. */
  readonly turns: boolean;
  readonly leftOut: readonly FilmStatement[];
}

/**
 * How a data set wants its samples shown: its first window or table of greys, brought to the units of the samples.
 * Takes the data set and what is known of its samples. Gives the look; what the file says and can't be is left out and
 * named. Under a rescale that can't be, neither window nor table can be brought to the samples.
 * @source DICOM PS3.3 C.11.1 modality LUT, C.11.2 window (memory)
 */
export function dicomLookOf(dataSet: DataSet, origin: SampleOrigin): DicomLook {
  const scale = modalityScaleOf(dataSet, origin);
  const asked = { window: saysWindow(dataSet), table: dataSet.elements.x00283010 !== undefined };
  if (scale === undefined) {
    const lost: FilmStatement[] = [
      ...(asked.window ? (["window"] as const) : []),
      ...(asked.table ? tableOfGreys : []),
    ];
    return { rescaled: false, turns: false, leftOut: ["rescale", ...lost] };
  }
  const written = windowOf(dataSet, scale);
  const table = written === undefined && asked.table ? tableWindowOf(dataSet) : undefined;
  const window = written ?? inSamples(table?.window, scale);
  return {
    ...(window === undefined ? {} : { window }),
    rescaled: scale.slope !== 1 || scale.intercept !== 0,
    turns: scale.slope < 0 !== (table?.falls === true),
    leftOut: [
      ...(asked.window && written === undefined ? (["window"] as const) : []),
      ...(asked.table && window === undefined ? tableOfGreys : []),
    ],
  };
}

const tableOfGreys = ["table of greys"] as const;

/** The modality scale of a data set; none but the identity where a table has been applied; nothing for one that can't be. */
function modalityScaleOf(dataSet: DataSet, { offset, modalityTable }: SampleOrigin): ModalityScale | undefined {
  if (modalityTable) return { slope: 1, intercept: 0, offset: 0 };
  const slope = isSaid(dataSet, "x00281053") ? numberAt(dataSet, "x00281053") : 1;
  const intercept = isSaid(dataSet, "x00281052") ? numberAt(dataSet, "x00281052") : 0;
  return slope === undefined || slope === 0 || intercept === undefined ? undefined : { slope, intercept, offset };
}

function tableWindowOf(dataSet: DataSet) {
  const item = dataSet.elements.x00283010?.items?.[0]?.dataSet;
  const table = item && lookupTableOf(item, "x00283002", "x00283006");
  return table && windowOfTable(table);
}

const functions: Readonly<Record<string, FilmWindow["function"]>> = {
  LINEAR: "linear",
  LINEAR_EXACT: "linearExact",
  SIGMOID: "sigmoid",
};

const saysWindow = (dataSet: DataSet): boolean => isSaid(dataSet, "x00281050") || isSaid(dataSet, "x00281051");

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

/** Beyond this, in samples, a window shows nothing but black or white. */
const farthest = 1e7;

/** A window of values as one of samples; nothing for one so far off that it shows none of them. */
function inSamples(
  window: FilmWindow | undefined,
  { slope, intercept, offset }: ModalityScale,
): FilmWindow | undefined {
  if (window === undefined) return undefined;
  const center = (window.center - intercept) / slope - offset;
  const width = window.width / Math.abs(slope);
  return Math.abs(center) <= farthest && width > 0 && width <= farthest ? { ...window, center, width } : undefined;
}
