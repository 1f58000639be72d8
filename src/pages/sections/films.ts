import { filmMeasures } from "../../figures/film-measures.ts";
import { type BodyOf, type Part, type PartOf, partsOf } from "../../record/parts.ts";
import { purposeWords } from "../../record/words/later-words.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { drawnTable, topicsOfMarks } from "../on-film/drawn-table.ts";
import { type Mark, measuresOfMark } from "../on-film/measures-on-film.ts";
import { type Block, type FilmBlock, type Line, type Page, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";

/** Each film with what was measured on it, in the order in which they were taken. */
export function filmPages(source: CaseSource): Page[] {
  const read = ledgerReader(source.ledger);
  const films = partsOf(source.parts, "film").sort((a, b) => (a.body.takenOn < b.body.takenOn ? -1 : 1));
  return films.map((film) => {
    const marks = marksOf(source.parts, film.id);
    const measures = measureTable(marks, read);
    return {
      title: sentence(`${purposeWords[film.body.purpose]} film`),
      subtitle: filmWords(film.body, source.parts),
      on: film.body.takenOn,
      blocks: [
        filmBlock(film, marks, read),
        ...(measures === undefined ? [] : [measures]),
        ...drawnTable([{ marks }], read),
        ...lesionBlock(marks, read),
        scaleLines(film, read),
      ],
      notes: notesOf(film, marks, source),
    };
  });
}

/** The marks on a film. */
export const marksOf = (parts: readonly Part[], film: string): Mark[] =>
  partsOf(parts, "mark").filter((mark) => mark.body.film === film);

/** `day 23, tube 20° from mesial`. */
export function filmWords(film: BodyOf<"film">, parts: readonly Part[]): string {
  const angle = film.horizontalAngleDeg;
  const tube =
    angle === undefined
      ? ""
      : angle === 0
        ? ", straight"
        : `, tube ${Math.abs(angle)}° from ${angle > 0 ? "mesial" : "distal"}`;
  return `${momentWords(film.takenOn, parts)}${tube}`;
}

/** A film as a block with its drawn measures. */
export function filmBlock(film: PartOf<"film">, marks: readonly Mark[], read: LedgerReader): FilmBlock {
  const { hash, columns, rows, view, caption } = film.body;
  const overlay = filmMeasures({ columns, rows, measures: marks.flatMap((mark) => measuresOfMark(mark, read)) });
  return {
    kind: "film",
    ...{ hash, columns, rows, overlay, alternative: overlay.alternative },
    ...(view === undefined
      ? {}
      : { window: { centre: view.windowCentre, width: view.windowWidth, invert: view.invert } }),
    caption: says(caption),
  };
}

/** What is printed of a course: head, name in the output, digits, unit. */
export const measured = [
  ["Length", "lengthMm", 1, "mm"],
  ["Schneider", "schneiderDeg", 0, "°"],
  ["Pruett angle", "pruettDeg", 0, "°"],
  ["Pruett radius", "pruettRadiusMm", 1, "mm"],
] as const;

/** Every traced course of a film, with intervals. */
function measureTable(marks: readonly Mark[], read: LedgerReader): Table | undefined {
  const traces = marks.filter((mark) => read.entry(`curvature of ${mark.id}`)?.output !== undefined);
  if (traces.length === 0) return undefined;
  const rows = traces.map((trace): Line[] => [
    says(trace.body.shape === "trace" ? (trace.body.canal ?? "course") : ""),
    ...measured.map(([, name, digits, unit]) => read.withInterval(`curvature of ${trace.id}`, name, { digits, unit })),
  ]);
  const heads = measured.map(([head]) => ({ head, align: "left" as const, share: 0.22 }));
  return {
    kind: "table",
    caption: "Measured along the traced courses (95 % intervals)",
    columns: [{ head: "Canal", align: "left", share: 0.12 }, ...heads],
    rows,
  };
}

/** What an outlined lesion measures: widest and area, with intervals. */
export function lesionLines(marks: readonly Mark[], read: LedgerReader): Line[] {
  return marks.flatMap(({ id, body }) => {
    const subject = `lesion of ${id}`;
    if (body.shape !== "outline" || read.entry(subject)?.output === undefined) return [];
    const widest = read.withInterval(subject, "largestDiameterMm", { digits: 1, unit: "mm" });
    const area = read.withInterval(subject, "areaMm2", { digits: 1, unit: "mm²" });
    return [[{ text: `${sentence(body.what)}: ` }, ...widest, { text: " widest, " }, ...area, { text: " area" }]];
  });
}

function lesionBlock(marks: readonly Mark[], read: LedgerReader): Block[] {
  const lines = lesionLines(marks, read);
  return lines.length === 0 ? [] : [{ kind: "text", heading: "Lesion (95 % intervals)", lines }];
}

function scaleLines(film: PartOf<"film">, read: LedgerReader): { kind: "text"; heading: string; lines: Line[] } {
  const subject = `calibrate of ${film.id}`;
  const entry = read.entry(subject);
  if (entry?.output === undefined)
    return { kind: "text", heading: "Scale", lines: [says("No scale; no lengths are given")] };
  const column = read.number(subject, "mmPerPx.column", 4);
  const relative = read.number(subject, "relativeSigma", 3);
  const line: Line = [
    ...(column === undefined ? [] : [column, { text: " mm per pixel" }]),
    ...(relative === undefined
      ? []
      : [
          { text: ", relative standard deviation ", quiet: true },
          { ...relative, quiet: true },
        ]),
  ];
  return { kind: "text", heading: "Scale", lines: [line, ...cautionsOf(entry.output).map(says)] };
}

/** The cautions that stand beside an output. */
function cautionsOf(output: unknown): string[] {
  const cautions: unknown = typeof output === "object" && output !== null ? Reflect.get(output, "cautions") : undefined;
  return Array.isArray(cautions) ? cautions.filter((caution): caution is string => typeof caution === "string") : [];
}

function notesOf(film: PartOf<"film">, marks: readonly Mark[], source: CaseSource): string[] {
  const subjects = [
    `calibrate of ${film.id}`,
    ...marks.flatMap(({ id }) => topicsOfMarks.map((topic) => `${topic} of ${id}`)),
  ];
  const entries = source.ledger.filter((entry) => subjects.includes(entry.subject) && entry.output !== undefined);
  return entries.map((entry) => `${source.methods.get(entry.topic) ?? entry.topic} Ledger ${entry.id.slice(0, 12)}.`);
}
