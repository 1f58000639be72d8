import type { DataSet } from "dicom-parser";
import type { FilmStatement, FilmTechnical } from "../film-pixels.ts";
import { isSaid, numberAt, textAt } from "./dicom-values.ts";
import type { DicomLook, SampleOrigin } from "./dicom-window.ts";

/** No receptor has pixels as large as this, in mm. */
const largestSpacingMm = 5;
/** Source to detector over source to object: 1 on the object itself; no film in a mouth is taken beyond 3. */
const magnifications = { least: 1, most: 3 } as const;

/**
 * What a data set says about how the film was made, from a closed list of attributes; nothing of the patient is read.
 * Takes the parsed data set, what is known of its samples and how it wants them shown. Gives the technical values that
 * are present and possible, and the names of those that are present and can't be.
 * @source DICOM PS3.3 C.8.11.7 and 10.7 spacing and magnification (memory)
 */
export function dicomTechnicalOf(
  dataSet: DataSet,
  { offset, modalityTable, lossy }: SampleOrigin,
  look: DicomLook,
): Omit<FilmTechnical, "wasColour"> {
  const scales = {
    ...present("detectorSpacingMm", spacingAt(dataSet, "x00181164")),
    ...present("pixelSpacingMm", spacingAt(dataSet, "x00280030")),
    ...present("calibrationType", calibrationTypes[textAt(dataSet, "x00280a02") ?? ""]),
    ...present("magnification", magnificationOf(dataSet)),
  };
  const leftOut = [...scalesLeftOut(dataSet, scales), ...look.leftOut];
  return {
    sourceFormat: "dicom",
    lossy: lossy || textAt(dataSet, "x00282110") === "01",
    ...scales,
    ...present("window", look.window),
    ...present("signedOffset", offset === 0 ? undefined : offset),
    ...present("modalityLut", modalityTable ? "table" : look.rescaled ? "rescale" : undefined),
    ...present("leftOut", leftOut.length === 0 ? undefined : leftOut),
  };
}

const calibrationTypes: Readonly<Record<string, "fiducial" | "geometry">> = {
  FIDUCIAL: "fiducial",
  GEOMETRY: "geometry",
};

function scalesLeftOut(
  dataSet: DataSet,
  found: Pick<FilmTechnical, "detectorSpacingMm" | "pixelSpacingMm" | "magnification">,
): FilmStatement[] {
  const said: readonly [FilmStatement, string, unknown][] = [
    ["spacing at the detector", "x00181164", found.detectorSpacingMm],
    ["pixel spacing", "x00280030", found.pixelSpacingMm],
    ["magnification", "x00181114", found.magnification],
  ];
  return said.flatMap(([name, tag, value]) => (value === undefined && isSaid(dataSet, tag) ? [name] : []));
}

function spacingAt(dataSet: DataSet, tag: string): readonly [number, number] | undefined {
  const row = numberAt(dataSet, tag, 0);
  const column = numberAt(dataSet, tag, 1);
  const isPossible = (side: number | undefined): side is number =>
    side !== undefined && side > 0 && side <= largestSpacingMm;
  return isPossible(row) && isPossible(column) ? [row, column] : undefined;
}

function magnificationOf(dataSet: DataSet): number | undefined {
  const found = numberAt(dataSet, "x00181114");
  const { least, most } = magnifications;
  return found !== undefined && found >= least && found <= most ? found : undefined;
}

function present<Name extends string, Value>(name: Name, value: Value | undefined): { [name in Name]?: Value } {
  const pair: { [name in Name]?: Value } = {};
  if (value !== undefined) pair[name] = value;
  return pair;
}
