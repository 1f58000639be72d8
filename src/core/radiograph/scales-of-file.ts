import type { CalibrateInput, ScaleOrigin } from "./calibrate-input.ts";
import type { MmPerPx } from "./points-in-plane.ts";
import { magnificationOf } from "./projection.ts";

/** One scale that a file's own fields give, and the plane in which it holds. */
export interface FileScale {
  readonly origin: Exclude<ScaleOrigin, "knownLength">;
  readonly mmPerPx: MmPerPx;
  /** Whether it claims to hold in the plane of the tooth. */
  readonly inToothPlane: boolean;
}

type FileFields = Omit<CalibrateInput, "known">;

/**
 * The scales that a file's fields give, the one to trust most first.
 * Takes the spacing fields as the file states them. Gives none where it states none.
 * @source DICOM PS3.3, clauses 10.7 and C.8.11.7 (memory); docs/methods/calibrate C4
 */
export function scalesOfFile(file: FileFields): FileScale[] {
  const scales: FileScale[] = [];
  if (file.pixelSpacingMm !== undefined && file.calibrationType !== undefined)
    scales.push({
      origin: file.calibrationType === "fiducial" ? "pixelSpacingFiducial" : "pixelSpacingGeometry",
      mmPerPx: stepsOf(file.pixelSpacingMm),
      inToothPlane: true,
    });
  if (file.detectorSpacingMm !== undefined) scales.push(scaleOfDetector(file.detectorSpacingMm, file));
  if (file.pixelSpacingMm !== undefined && file.calibrationType === undefined)
    scales.push({
      origin: "pixelSpacingOfUnknownOrigin",
      mmPerPx: stepsOf(file.pixelSpacingMm),
      inToothPlane: false,
    });
  return scales;
}

function scaleOfDetector(spacing: readonly [number, number], file: FileFields): FileScale {
  const magnification = statedMagnification(file);
  if (magnification === undefined) return { origin: "detectorSpacing", mmPerPx: stepsOf(spacing), inToothPlane: false };
  return {
    origin: "detectorSpacingOverMagnification",
    mmPerPx: { row: spacing[0] / magnification, column: spacing[1] / magnification },
    inToothPlane: true,
  };
}

/** The magnification that is stated, or that the stated distances give; absent where neither is there. */
export const statedMagnification = (file: FileFields): number | undefined =>
  file.magnification ?? (file.geometry === undefined ? undefined : magnificationOf(file.geometry));

/** The order in a file is [between rows, between columns]. */
const stepsOf = ([row, column]: readonly [number, number]): MmPerPx => ({ row, column });
