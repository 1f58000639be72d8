import type { DataSet } from "dicom-parser";
import type { FilmPixels } from "../film-pixels.ts";
import { luminanceOf, luminanceOfYbr } from "../luminance.ts";
import { refuseFile } from "../refuse-file.ts";
import type { DicomCells } from "./dicom-cells.ts";
import type { DicomPicture } from "./dicom-picture.ts";
import { dicomSamplesOf, signedOffsetOf } from "./dicom-samples.ts";
import { dicomTechnicalOf } from "./dicom-technical.ts";
import { dicomLookOf } from "./dicom-window.ts";
import { type LookupTable, lookedUp, lookupTableOf } from "./lookup-table.ts";
import { paletteLuminanceOf } from "./palette-luminance.ts";

/** All that a film is made of. */
export interface DicomParts {
  readonly dataSet: DataSet;
  readonly picture: DicomPicture;
  readonly cells: DicomCells;
  readonly name: string;
}

/**
 * The film of a DICOM file whose picture is unpacked.
 * Takes the data set, its picture and cells, and the file's name.
 * Gives grey samples: luminance of colours, and what a modality table makes of the stored values if there is one.
 * @throws Refusal `file.unsupported` for a palette, `file.damaged` for a modality table that is not whole.
 * @source DICOM PS3.3 C.11.1 modality LUT, C.7.6.3.1.2 photometric interpretation (memory)
 */
export function dicomFilmOf({ dataSet, picture, cells, name }: DicomParts): FilmPixels {
  const { columns, rows } = picture;
  const wasColour = picture.perPixel === 3 || picture.photometric === "PALETTE";
  const table = modalityTableOf(dataSet, name);
  const stored = greysOf({ dataSet, picture, cells, name });
  const storedOffset = signedOffsetOf(cells.bitsStored, cells.signed);
  const { bitsStored, samples } = table === undefined ? stored : throughTable(stored.samples, table, storedOffset);
  const offset = table === undefined ? storedOffset : 0;
  const origin = { offset, modalityTable: table !== undefined, lossy: cells.lossy };
  // A negative slope turns bright into dark; the samples stay as stored, so what is said of them is turned instead.
  const look = dicomLookOf(dataSet, origin);
  const darkIsHigh = (picture.photometric === "MONOCHROME1") !== look.turns;
  return {
    columns,
    rows,
    bitsStored,
    samples,
    photometric: darkIsHigh ? "MONOCHROME1" : "MONOCHROME2",
    technical: { ...dicomTechnicalOf(dataSet, origin, look), wasColour },
  };
}

type Greys = Pick<FilmPixels, "bitsStored" | "samples">;

function greysOf({ dataSet, picture, cells, name }: DicomParts): Greys {
  const samples = dicomSamplesOf(cells);
  const { bitsStored } = cells;
  if (picture.photometric === "PALETTE") {
    const palette = paletteLuminanceOf(dataSet, name);
    return throughTable(samples, palette, signedOffsetOf(bitsStored, cells.signed));
  }
  if (picture.perPixel === 1) return { bitsStored, samples };
  const toGrey = cells.isYbr ? luminanceOfYbr(bitsStored) : undefined;
  return { bitsStored, samples: luminanceOf(samples, cells.colour, picture.columns * picture.rows, toGrey) };
}

function throughTable(samples: Uint16Array, table: LookupTable, offset: number): Greys {
  return { bitsStored: table.bits, samples: samples.map((sample) => lookedUp(table, sample + offset)) };
}

function modalityTableOf(dataSet: DataSet, name: string): LookupTable | undefined {
  const sequence = dataSet.elements.x00283000;
  if (sequence === undefined) return undefined;
  const item = sequence.items?.[0]?.dataSet;
  const table = item && lookupTableOf(item, "x00283002", "x00283006");
  if (table !== undefined) return table;
  throw refuseFile(name, {
    code: "file.damaged",
    state: "the table that its samples go through (modality LUT) is not whole; export the film again",
  });
}
