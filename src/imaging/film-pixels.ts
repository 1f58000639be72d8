/** A window as the file states it: which stored values become grey, in the units of {@link FilmPixels.samples}. */
export interface FilmWindow {
  /** The value shown as middle grey, in stored samples (after {@link FilmTechnical.signedOffset} was taken away). */
  readonly center: number;
  /** How many values the window spans; at least 1 for "linear", above 0 for the others. */
  readonly width: number;
  /** Which formula of DICOM PS3.3 C.11.2 spreads the grey. */
  readonly function: "linear" | "linearExact" | "sigmoid";
}

/** What a file may say of a film in a way that can't be. */
export type FilmStatement =
  | "spacing at the detector"
  | "pixel spacing"
  | "magnification"
  | "window"
  | "table of greys"
  | "rescale";

/** What a file says about how its film was made; never who it shows. */
export interface FilmTechnical {
  readonly sourceFormat: "dicom" | "png" | "jpeg" | "tiff" | "bmp";
  /** Distance between rows and between columns at the detector, in mm (Imager Pixel Spacing). */
  readonly detectorSpacingMm?: readonly [row: number, column: number];
  /** Distance between rows and between columns in the plane that the file calls calibrated, in mm (Pixel Spacing). */
  readonly pixelSpacingMm?: readonly [row: number, column: number];
  /** How {@link FilmTechnical.pixelSpacingMm} was found; absent where the file does not say. */
  readonly calibrationType?: "fiducial" | "geometry";
  /** Estimated radiographic magnification: source to detector over source to object; above 0. */
  readonly magnification?: number;
  readonly window?: FilmWindow;
  /** The value that a stored 0 stands for, where the file kept signed values. */
  readonly signedOffset?: number;
  /** The file held colour; the samples are its luminance. */
  readonly wasColour: boolean;
  /** The file was compressed with loss somewhere on its way; grey levels are to be trusted less. */
  readonly lossy: boolean;
  /** The EXIF orientation (2..8) that has been applied to the samples; absent where nothing was turned. */
  readonly orientationApplied?: number;
  /**
   * The file holds a modality table, which the samples have gone through, or a rescale that is not the identity, before
   * which they are as stored: a table says what grey is, a rescale only what unit it has.
   */
  readonly modalityLut?: "table" | "rescale";
  /** What the file says in a way that can't be (a spacing of 0, a rescale that is no number), and what was left out for it. */
  readonly leftOut?: readonly FilmStatement[];
}

/** A film as every room reads it: grey samples in rows, and how they were made. Holds no attribute of the patient. */
export interface FilmPixels {
  /** Number of columns, at least 1. */
  readonly columns: number;
  /** Number of rows, at least 1. */
  readonly rows: number;
  /** Bits that a sample uses, 1..16; every sample is below 2 to this power. */
  readonly bitsStored: number;
  /** `rows * columns` samples, row by row from the top, left to right. */
  readonly samples: Uint16Array;
  /** Whether a larger sample is brighter ("MONOCHROME2") or darker ("MONOCHROME1"), of the samples as kept here. */
  readonly photometric: "MONOCHROME1" | "MONOCHROME2";
  readonly technical: FilmTechnical;
}
