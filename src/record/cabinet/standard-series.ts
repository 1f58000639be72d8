import { standardSizes, standardTaper, standardWorkingMm } from "../../core/instrument/iso-series.ts";
import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";

type InstrumentBody = CabinetItemOf<"instrument">["body"];

/** The lengths in which hand files are usually kept, mm: common practice. */
const lengthsMm = [21, 25, 31] as const;

/**
 * The hand files of the standard that a cabinet does not hold yet, as bodies of its instruments: every size from 06 to
 * 140, taper .02, in 21, 25 and 31 mm, stainless steel.
 * Takes the items that stand; one of the same geometry and alloy, whatever its name, is not offered again.
 * @source ISO 3630-1 (memory); the lengths are common practice
 */
export function standardSeries(items: readonly CabinetItem[]): InstrumentBody[] {
  const stands = new Set(items.flatMap((item) => (item.kind === "instrument" ? [geometryOf(item.body)] : [])));
  return lengthsMm
    .flatMap((lengthMm) => standardSizes.map((size) => handFile(size, lengthMm)))
    .filter((body) => !stands.has(geometryOf(body)));
}

function handFile(size: number, lengthMm: number): InstrumentBody {
  const name = `Hand file ${String(size).padStart(2, "0")}, ${lengthMm} mm`;
  const geometry = { size, taper: standardTaper, workingMm: standardWorkingMm, lengthMm };
  return { name, ...geometry, alloy: "stainlessSteel", movement: "hand" };
}

/** What makes two instruments the same for the series; a working part that nobody stated is the standard's. */
function geometryOf({ size, taper, profile, lengthMm, alloy, movement, ...body }: InstrumentBody): string {
  const { workingMm = standardWorkingMm } = body;
  return JSON.stringify([size, taper, profile ?? null, workingMm, lengthMm ?? null, alloy, movement]);
}
