import type { FilmImport } from "../../../server/api.ts";
import { type CropBox, isWhole } from "./crop-box.ts";
import type { FilmSize } from "./film-point.ts";

/** What a person chose about a film before it is taken in. */
export interface ImportChoice {
  readonly takenOn: string;
  readonly purpose: FilmImport["purpose"];
  readonly invert: boolean;
  /** Absent for the whole picture. */
  readonly crop?: CropBox | undefined;
}

/** The largest file that the program takes in, in bytes; said before anything is sent. */
export const largestFile = 256 * 1024 * 1024;

/** The question that goes with a film's bytes to the local API, as the end of an address. */
export function importQuery(name: string, choice: ImportChoice, picture: FilmSize): string {
  const { takenOn, purpose, invert, crop } = choice;
  const asked = { name: name.slice(-200), takenOn, purpose, invert: invert ? "yes" : "no", ...cropOf(crop, picture) };
  return new URLSearchParams(Object.entries(asked).map(([key, value]) => [key, String(value)])).toString();
}

function cropOf(crop: CropBox | undefined, picture: FilmSize) {
  if (crop === undefined || isWhole(crop, picture)) return {};
  return { cropColumn: crop.column, cropRow: crop.row, cropColumns: crop.columns, cropRows: crop.rows };
}

/** Why a file can't be taken in, seen from outside; undefined if it may be tried. */
export function refusedFile({ name, size }: { readonly name: string; readonly size: number }): string | undefined {
  if (size === 0) return `Cannot take in ${name}: it is empty; copy it again`;
  if (size <= largestFile) return undefined;
  const megabytes = (bytes: number) => Math.round(bytes / 1024 / 1024);
  return `Cannot take in ${name}: it has ${megabytes(size)} MB, and a film may have ${megabytes(largestFile)}; export it smaller`;
}
