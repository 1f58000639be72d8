import type { DifficultyFact } from "./difficulty-output.ts";
import type { DifficultyRow } from "./difficulty-table.ts";
import type { RecordedFact } from "./recorded-facts.ts";

type Lies = "above" | "below" | "at";

/** A recorded fact beside the threshold of its row, and whether it makes the tooth harder. */
export function heldToThreshold(row: DifficultyRow, found: RecordedFact): { fact: DifficultyFact; harder: boolean } {
  const { value, canal } = found;
  const { id, group, because, source, mark, is } = row;
  const isMeasure = typeof value === "number" && row.value !== undefined;
  const harder = isMeasure ? isHarder(row, value) : value !== false;
  return {
    harder,
    fact: {
      ...{ id, group },
      ...(canal === undefined ? {} : { canal }),
      ...{ says: saysOf(row, found, harder), because, value },
      ...(row.unit === undefined ? {} : { unit: row.unit }),
      ...(found.interval === undefined ? {} : { interval: found.interval }),
      ...(found.fromOneFilm === true && id === "deflection" ? { atLeast: true } : {}),
      threshold: { ...(row.value === undefined ? {} : { value: row.value }), source, mark, is },
      ...(isMeasure ? measured(row, found, value) : { lies: harder ? "present" : "absent" }),
    },
  };
}

/** Whether a measure lies on the harder side of its row's threshold. */
function isHarder({ is, value: limit = 0 }: DifficultyRow, value: number): boolean {
  if (is === "below") return value < limit;
  return is === "atLeast" ? value >= limit : value > limit;
}

function measured(row: DifficultyRow, { interval }: RecordedFact, value: number): Pick<DifficultyFact, "lies" | "by"> {
  const limit = row.value ?? 0;
  const harder = isHarder(row, value);
  const ends = interval === undefined ? [] : [interval.low, interval.high];
  const others = row.others?.map((one) => ({ ...one, lies: liesAt(value, one.value) }));
  return {
    ...{ lies: liesAt(value, limit), by: Math.abs(value - limit) },
    ...(interval === undefined ? {} : { sure: ends.every((end) => isHarder(row, end) === harder) }),
    ...(others === undefined ? {} : { otherThresholds: others }),
  };
}

const liesAt = (value: number, limit: number): Lies => (value === limit ? "at" : value > limit ? "above" : "below");

/** The row's sentence with its values, and how far from the threshold a measure lies. */
function saysOf(row: DifficultyRow, found: RecordedFact, harder: boolean): string {
  const canal = found.canal ?? "a canal";
  if (found.value === false) return filled(row.saysNone ?? row.says, canal, "");
  if (typeof found.value !== "number") return filled(row.says, canal, String(found.value));
  const { value: limit = 0, unit = "" } = row;
  const difference = Math.abs(found.value - limit);
  const written = (value: number): string => withUnit(value, unit, difference);
  const said = filled(row.says, canal, `${atLeast(row, found)}${written(found.value)}${onFilm(row, found)}`);
  const lies = liesAt(found.value, limit);
  const by = lies === "at" ? "at" : `${written(difference)} ${lies}`;
  // Whatever one film shows, the true bend can lie above.
  const open = !harder && atLeast(row, found) !== "" ? ": the true bend may lie above" : "";
  return limit === 0 && row.is === "above" ? said : `${said}; ${by} ${withUnit(limit, unit, 0)}${open}`;
}

/** Of a measure that is only known to be there the sentence stands without a value. */
function filled(says: string, canal: string, value: string): string {
  const whole = value === "true" ? says.replace("{value} ", "") : says.replace("{value}", value);
  const text = whole.replace("{canal}", canal);
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}

const atLeast = ({ id }: DifficultyRow, { fromOneFilm }: RecordedFact): string =>
  fromOneFilm === true && id === "deflection" ? "at least " : "";
const onFilm = ({ id }: DifficultyRow, { fromOneFilm }: RecordedFact): string =>
  fromOneFilm === true && (id === "deflection" || id === "radius") ? " on one film" : "";

/** To a tenth of a mm and to whole degrees and classes; one digit more where the difference would vanish. */
function withUnit(value: number, unit: string, difference: number): string {
  if (unit === "mm") return `${value.toFixed(Math.abs(difference) < 0.1 && difference !== 0 ? 2 : 1)} mm`;
  return `${value.toFixed(Math.abs(difference) < 1 && difference !== 0 ? 1 : 0)}${unit}`;
}
