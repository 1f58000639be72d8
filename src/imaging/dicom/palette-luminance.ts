import type { DataSet } from "dicom-parser";
import { luminance } from "../luminance.ts";
import { refuseFile } from "../refuse-file.ts";
import { type LookupTable, lookupTableOf } from "./lookup-table.ts";

/**
 * The greys of a palette: the luminance of each of its colours.
 * Takes the data set and the file's name. Gives a table from the stored number to the grey.
 * @throws Refusal `file.unsupported` where the three tables are not there in full or do not fit each other.
 * @source DICOM PS3.3 C.7.9 palette color lookup table module (memory)
 */
export function paletteLuminanceOf(dataSet: DataSet, name: string): LookupTable {
  const red = lookupTableOf(dataSet, "x00281101", "x00281201");
  const green = lookupTableOf(dataSet, "x00281102", "x00281202");
  const blue = lookupTableOf(dataSet, "x00281103", "x00281203");
  const sizes = new Set([red, green, blue].map((table) => table?.outputs.length));
  if (red === undefined || green === undefined || blue === undefined || sizes.size !== 1)
    throw refuseFile(name, {
      code: "file.unsupported",
      state: "its palette of colours is missing, packed or not whole; export it in grey",
    });
  const greys = red.outputs.map((level, at) => luminance(level, green.outputs[at] ?? 0, blue.outputs[at] ?? 0));
  return { first: red.first, bits: Math.max(red.bits, green.bits, blue.bits), outputs: greys };
}
