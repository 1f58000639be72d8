import { type BodyOf, type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader, numberText } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says, type Table } from "../page-model.ts";
import { inWords, sentence } from "../record-words.ts";
import { toothFigure } from "../tooth-figure.ts";
import { textBlock } from "./presenting.ts";

type Visit = BodyOf<"visit">;
type Row = Visit["canals"][number];

/** Each visit: the canal table, what was used in order, what was told. */
export function visitPages(source: CaseSource): Page[] {
  const read = ledgerReader(source.ledger);
  const visits = partsOf(source.parts, "visit").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));
  return visits.map(({ body }, index) => ({
    title: `Visit ${index + 1}`,
    on: body.on,
    subtitle: [
      momentWords(body.on, source.parts),
      body.minutes === undefined ? "" : `${body.minutes} min`,
      body.help === undefined ? "" : `resident: ${body.help}`,
    ]
      .filter((piece) => piece !== "")
      .join(", "),
    blocks: [
      ...emblemOf(source, body.on),
      ...textBlock("Aim", body.aim),
      ...canalTables(body, { parts: source.parts, read }),
      ...sequence(body),
      ...textBlock("Told to the patient", body.told),
      ...textBlock("Note", body.note),
    ],
    notes: [],
  }));
}

/** The tooth as the visit left it. */
function emblemOf(source: CaseSource, day: string): Block[] {
  const figure = toothFigure(source, 900, day);
  return figure === undefined ? [] : [{ kind: "figure", figure, caption: "The canals as the visit left them" }];
}

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
    says(row.blockedBy === undefined ? inWords(row.state) : `${inWords(row.state)}: ${row.blockedBy}`),
    says(row.reference),
    says(millimetres(row.locatorMm)),
    film,
    says(millimetres(row.workingLengthMm)),
    says(
      row.apicalSize === undefined
        ? "–"
        : `${row.apicalSize}${row.taper === undefined ? "" : ` .${String(Math.round(row.taper * 100)).padStart(2, "0")}`}`,
    ),
    says(fillingEnd(row.fillingEndMm)),
  ];
}

const millimetres = (value: number | undefined): string => (value === undefined ? "–" : numberText(value, 1));

function fillingEnd(end: number | undefined): string {
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

function sequence(visit: Visit): Block[] {
  const irrigants = visit.irrigation.map((one) => {
    const percent = one.percent === undefined ? "" : ` ${one.percent} %`;
    const activated = one.activated === "no" ? "" : `, ${one.activated} activation`;
    return says(`${sentence(one.solution)}${percent}, ${one.volumeMl} ml, ${one.minutes} min${activated}`);
  });
  const solvents = visit.solvent.map((dose) =>
    says(`${sentence(dose.solvent)} ${dose.volumeMl} ml at minute ${dose.atMin}`),
  );
  const left =
    visit.medicament === undefined || visit.medicament.kind === "none"
      ? []
      : [says(`Dressing: ${inWords(visit.medicament.kind)}`)];
  const temporary =
    visit.temporary === undefined
      ? []
      : [
          says(
            `Temporary filling: ${visit.temporary.material}${visit.temporary.thicknessMm === undefined ? "" : `, ${visit.temporary.thicknessMm} mm`}`,
          ),
        ];
  const dam = visit.isolation.rubberDam === "used" ? [says("Rubber dam used")] : [];
  const lines = [...dam, ...solvents, ...irrigants, ...left, ...temporary];
  return lines.length === 0 ? [] : [{ kind: "text", heading: "Used, in order", lines }];
}
