import { z } from "zod";
import { canonicalJson } from "./canonical-json.ts";
import { type SizedInstrument, sizedInstrument } from "./instrument-as-told.ts";
import { instrumentGeometry } from "./instrument-geometry.ts";

const geometry = z.object(instrumentGeometry);
/** An instrument by geometry and alloy. */
export type InstrumentGeometry = z.infer<typeof geometry>;

/** One instrument of several rows: its name, its geometry and which rows it stands in. */
export interface NamedInstrument {
  readonly name: string;
  readonly geometry: InstrumentGeometry;
  /** Places in the list of rows, in their order. */
  readonly rows: readonly number[];
}

/**
 * What an instrument is called: size and taper, as `25/.06` or `08/.02`; `25/v` where its taper varies.
 * Takes its geometry. Gives a name that other geometries may share: see {@link instrumentsByName}.
 */
export const instrumentName = ({
  size,
  taper,
  profile,
}: Pick<InstrumentGeometry, "size" | "taper" | "profile">): string =>
  `${String(size).padStart(2, "0")}/${profile === undefined ? taperText(taper) : "v"}`;

/** `.06`, or `.045` where the hundredths don't say it. */
const taperText = (taper: number): string => {
  const digits = Math.abs(Math.round(taper * 100) / 100 - taper) < 1e-9 ? 2 : 3;
  return taper.toFixed(digits).replace(/^0/, "");
};

/** The geometry of a row that holds more than that. */
export const geometryOf = (row: InstrumentGeometry): InstrumentGeometry => geometry.parse(row);

/**
 * The instruments of some rows, each distinct geometry once, by name.
 * Takes the rows in their order. Gives them in the order of their first rows; a second geometry of one name is called `25/.06 (2)`.
 */
export function instrumentsByName(rows: readonly InstrumentGeometry[]): NamedInstrument[] {
  const found = new Map<string, { geometry: InstrumentGeometry; rows: number[] }>();
  for (const [index, row] of rows.entries()) {
    const own = geometryOf(row);
    const written = canonicalJson(own);
    const known = found.get(written);
    if (known === undefined) found.set(written, { geometry: own, rows: [index] });
    else known.rows.push(index);
  }
  const alike = new Map<string, number>();
  return [...found.values()].map((one) => {
    const name = instrumentName(one.geometry);
    const nth = (alike.get(name) ?? 0) + 1;
    alike.set(name, nth);
    return { name: nth === 1 ? name : `${name} (${nth})`, ...one };
  });
}

/** Whether two descriptions can be of one instrument: alike in all that both of them say. */
export function isSameInstrument(one: SizedInstrument, other: SizedInstrument): boolean {
  const [own = {}, others = {}] = [sizedInstrument(one), sizedInstrument(other)];
  const b = new Map<string, unknown>(Object.entries(others));
  return Object.entries(own).every(([field, value]) => {
    const beside = b.get(field);
    return value === undefined || beside === undefined || canonicalJson(value) === canonicalJson(beside);
  });
}
