import { type BodyOf, type Part, type PartOf, partsOf } from "../../record/parts.ts";
import { canalStateWords } from "../../record/words/visit-words.ts";
import { type LedgerReader, numberText } from "../ledger-reader.ts";
import { type Line, says, type Table } from "../page-model.ts";

type Visit = BodyOf<"visit">;
type Row = Visit["canals"][number];

/** The canal table of a visit: lengths with their reference point, sizes, filling. */
export function canalTables(visit: Visit, from: { parts: readonly Part[]; read: LedgerReader }): Table[] {
  if (visit.canals.length === 0) return [];
  const columns = [
    ["Canal", 0.08],
    ["State", 0.12],
    ["Reference point", 0.17],
    ["Locator mm", 0.1],
    ["Film mm", 0.17],
    ["Length mm", 0.1],
    ["Shaped to", 0.1],
    ["Filling ends", 0.16],
  ] as const;
  return [
    {
      kind: "table",
      caption: "Canals",
      columns: columns.map(([head, share]) => ({ head, share, align: "left" as const })),
      rows: visit.canals.map((row) => canalRow(row, visit, from)),
    },
  ];
}

function canalRow(row: Row, visit: Visit, { parts, read }: { parts: readonly Part[]; read: LedgerReader }): Line[] {
  const trace = traceOf(parts, row.canal, visit.on);
  const film =
    trace === undefined
      ? says("–")
      : read.withInterval(`workingLength of ${trace.id}`, "radiographicMm", { digits: 1, unit: "" });
  return [
    says(row.canal),
    says(row.blockedBy === undefined ? canalStateWords[row.state] : `${canalStateWords[row.state]}: ${row.blockedBy}`),
    says(row.reference),
    says(millimetres(row.locatorMm)),
    film,
    says(millimetres(row.workingLengthMm)),
    says(
      row.apicalSize === undefined
        ? "–"
        : row.taper === undefined
          ? `${row.apicalSize}`
          : `${row.apicalSize} ${taperWords(row.taper)}`,
    ),
    says(fillingEnd(row.fillingEndMm)),
  ];
}

/** A taper as it is said: `.06`. */
export const taperWords = (taper: number): string => `.${String(Math.round(taper * 100)).padStart(2, "0")}`;

const millimetres = (value: number | undefined): string => (value === undefined ? "–" : numberText(value, 1));

/** `0.8 mm short` or `0.5 mm beyond`; a dash where it is not recorded. */
export function fillingEnd(end: number | undefined): string {
  if (end === undefined) return "–";
  return end < 0 ? `${numberText(-end, 1)} mm beyond` : `${numberText(end, 1)} mm short`;
}

/** The trace of a canal on the working length film nearest before or on the day, else on any film of that day or before. */
function traceOf(parts: readonly Part[], canal: string, on: string): PartOf<"mark"> | undefined {
  const films = new Map<string, BodyOf<"film">>(partsOf(parts, "film").map((film) => [film.id, film.body]));
  const traces = partsOf(parts, "mark").filter((mark) => mark.body.shape === "trace" && mark.body.canal === canal);
  const ranked = traces.flatMap((trace) => {
    const film = films.get(trace.body.film);
    return film === undefined || film.takenOn > on
      ? []
      : [{ trace, rank: `${film.purpose === "workingLength" ? 1 : 0}${film.takenOn}` }];
  });
  return ranked.sort((a, b) => (a.rank < b.rank ? 1 : -1))[0]?.trace;
}
