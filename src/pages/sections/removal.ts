import { removalSubject, removalTold } from "../../ledger/removal-told.ts";
import { attemptsAgainstRules, hasStopRule, rulesStoodFirst } from "../../record/attempts-against-rules.ts";
import type { BodyOf, PartOf } from "../../record/parts.ts";
import { piecesOf } from "../../record/pieces.ts";
import {
  movedWords,
  pathWords,
  removalResultWords,
  removalToolWords,
  seriesByWords,
  seriesCountedWords,
} from "../../record/words/removal-words.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, type Run, says, type Table } from "../page-model.ts";
import { waysFigure } from "../removal-figures.ts";
import { sentence } from "../sentence.ts";
import { shareWithInterval } from "../share-with-interval.ts";
import { sourceWithStar, withSourceNames } from "../source-name.ts";
import { textBlock } from "./presenting.ts";

type Removal = BodyOf<"removal">;
type Told = NonNullable<ReturnType<typeof removalTold>>;

/** Whether each piece was worth taking out: the ways beside each other, the chances, the rules, the attempts and the result. */
export function removalPages(source: CaseSource): Page[] {
  return weighedIn(source).flatMap(({ removal, canal }) => [
    ...waysPage(source, removal, canal),
    ...attemptsPage(source, removal, canal),
  ]);
}

/** Every removal that was weighed, with the canal of its piece. */
const weighedIn = ({ parts }: CaseSource) =>
  piecesOf(parts).flatMap(({ mishap, removal }) =>
    removal === undefined ? [] : [{ removal, canal: mishap?.body.canal }],
  );

const titled = (says: string, canal: string | undefined): string => (canal === undefined ? says : `${says}, ${canal}`);

function waysPage(source: CaseSource, { id, body }: PartOf<"removal">, canal: string | undefined): Page[] {
  const read = ledgerReader(source.ledger);
  const subject = removalSubject(id);
  const told = removalTold(read.entry(subject));
  if (told === undefined) return [];
  const figure = waysFigure(told, { theme: source.theme, widthPx: 1000, letters: 1.45, bare: true });
  const blocks: Block[] = [
    { kind: "figure", figure, caption: "Each way: bone healed and tooth kept, with 95 % intervals; * recalled" },
    { kind: "text", lines: [says(sentence(told.figuresSay))] },
    ...wallBlock(told, read, subject),
    ...chanceBlock(told, read, subject),
  ];
  return [
    {
      ...{ title: titled("Removal: the ways side by side", canal), on: body.on, blocks },
      subtitle: momentWords(body.on, source.parts),
      notes: [
        ...noted("For", told.reasons.for),
        ...noted("Against", told.reasons.against),
        ...groupsNoted(chancesOfCase(told, read, subject)),
      ],
    },
  ];
}

/** Reasons as they are said beside the slide. */
const noted = (side: string, reasons: readonly string[]): string[] =>
  reasons.map((one) => `${side}: ${withSourceNames(one)}`);

/** What the straight path and the platform leave. */
function wallBlock({ sightLine, platform }: Told, read: LedgerReader, subject: string): Block[] {
  const left = (path: string): Run[] => {
    const value = read.number(subject, path, 2);
    return value === undefined ? [{ text: "wall not known" }] : [value, { text: " mm left" }];
  };
  const width = read.number(subject, "platform.widthMm", 2);
  const lines: Line[] = [
    ...(sightLine === undefined
      ? []
      : [
          [
            ...[{ text: "Straight path: " }, ...left("sightLine.wallLeftMm")],
            { text: `; ${pathWords[sightLine.path.verdict]}` },
          ],
        ]),
    ...(platform === undefined || width === undefined
      ? []
      : [[{ text: "Platform " }, width, { text: " mm wide: " }, ...left("platform.wallLeftMm")]]),
  ];
  return lines.length === 0 ? [] : [{ kind: "text", heading: "Dentine left", lines }];
}

/** A published group that the case belongs to, with its line. */
interface ChanceOfCase {
  readonly share: number;
  /** Whether n of N are printed for it. */
  readonly isCounted: boolean;
  readonly line: Line;
}

/** `Beyond the bend, removed: 12/40, 0.30 (0.18 to 0.45), Known 2001*`. */
function chancesOfCase({ removalChance }: Told, read: LedgerReader, subject: string): ChanceOfCase[] {
  return removalChance.flatMap((row, index): ChanceOfCase[] => {
    if (row.matches !== "yes" || row.share === undefined) return [];
    const at = `removalChance[${index}]`;
    const [events, n] = [read.number(subject, `${at}.events`, 0), read.number(subject, `${at}.n`, 0)];
    const counts = events && n ? [events, { text: "/" }, n, { text: ", " }] : [];
    const name = row.group === "" ? seriesByWords[row.by] : row.group;
    const line: Line = [
      { text: `${sentence(name)}, ${seriesCountedWords[row.success]}: ` },
      ...counts,
      ...shareWithInterval(read, subject, { share: `${at}.share`, interval: `${at}.interval` }),
      { text: `, ${sourceWithStar({ source: row.series, mark: row.mark })}`, quiet: true },
    ];
    return [{ share: row.share, isCounted: counts.length > 0, line }];
  });
}

/** Of the groups those that print counts, where any does, from the lowest share to the highest; and how they are called. */
function countedFirst(all: readonly ChanceOfCase[]): { readonly sorted: readonly ChanceOfCase[]; readonly of: string } {
  const counted = all.filter(({ isCounted }) => isCounted);
  const sorted = (counted.length === 0 ? all : counted).toSorted((a, b) => a.share - b.share);
  return { sorted, of: counted.length === 0 || counted.length === all.length ? "" : " that print counts" };
}

/** The first groups alone would choose the number: of those with counts the lowest, a middle one and the highest stand there. */
function chanceBlock(told: Told, read: LedgerReader, subject: string): Block[] {
  const all = chancesOfCase(told, read, subject);
  if (all.length === 0) return [];
  const { sorted, of } = countedFirst(all);
  const middle = Math.floor((sorted.length - 1) / 2);
  const shown = sorted.filter((_, at) => at === 0 || at === middle || at === sorted.length - 1);
  const others = all.length - shown.length;
  const which = sorted.length > shown.length ? `Lowest, middle and highest of ${sorted.length}${of}; ` : "";
  const rest = sentence(`${which}${others} ${others === 1 ? "other" : "others"} in the notes`);
  const lines = [...shown.map(({ line }) => line), ...(others > 0 ? [says(rest)] : [])];
  return [{ kind: "text", heading: "Groups that this case belongs to", lines }];
}

/** Every group beside the slide, from the lowest share to the highest. */
const groupsNoted = (groups: readonly ChanceOfCase[]): string[] =>
  groups
    .toSorted((a, b) => a.share - b.share)
    .map(({ line }) => `Group of this case: ${line.map(({ text }) => text).join("")}`);

/** Rules, attempts and result; no page where none of them is there. */
function attemptsPage({ parts }: CaseSource, { body }: PartOf<"removal">, canal: string | undefined): Page[] {
  const blocks = [...rulesBlock(body), ...attemptsTable(body), ...resultBlock(body)];
  if (blocks.length === 0) return [];
  const title = titled("Removal: rules, attempts, result", canal);
  return [{ title, subtitle: momentWords(body.on, parts), on: body.on, blocks, notes: [] }];
}

function rulesBlock(body: Removal): Block[] {
  const words = rulesInWords(body);
  return words === undefined ? [] : [{ kind: "text", heading: "Stop rules", lines: [says(words)] }];
}

/** `Set before the first attempt: 45 min, 3 attempts`. */
function rulesInWords(body: Removal): string | undefined {
  if (body.stopRules === undefined || !hasStopRule(body)) return undefined;
  const { minutes, attempts, wallLeftMm, other } = body.stopRules;
  const rules = [
    minutes === undefined ? "" : `${minutes} min`,
    attempts === undefined ? "" : `${attempts} ${attempts === 1 ? "attempt" : "attempts"}`,
    wallLeftMm === undefined ? "" : `no dentine below ${wallLeftMm} mm`,
    (other ?? "").replace(/\.$/, ""),
  ].filter((rule) => rule !== "");
  const when =
    rulesStoodFirst(body, body.running) === true ? "Set before the first attempt" : "Set after the first attempt";
  return `${when}: ${rules.join("; ")}`;
}

function attemptsTable(body: Removal): Table[] {
  if (body.attempts.length === 0) return [];
  const columns = [
    ["Attempt", 0.1],
    ["Minutes", 0.12],
    ["Tool", 0.2],
    ["Tip", 0.22],
    ["Moved", 0.2],
    ["Note", 0.16],
  ] as const;
  return [
    {
      kind: "table",
      caption: `${sentence(totalInWords(body))}`,
      columns: columns.map(([head, share]) => ({ head, share, align: head === "Minutes" ? "right" : "left" })),
      rows: body.attempts.map(({ minutes, tool, tip, moved, note }, index) =>
        [String(index + 1), String(minutes), removalToolWords[tool], tip || "–", movedWords[moved], note || "–"].map(
          says,
        ),
      ),
    },
  ];
}

/** `2 attempts, 21 min in all`. */
function totalInWords(body: Removal): string {
  const { minutes, attempts } = attemptsAgainstRules(body);
  return `${attempts} ${attempts === 1 ? "attempt" : "attempts"}, ${Number(minutes.toFixed(1))} min in all`;
}

function resultBlock({ result, told }: Removal): Block[] {
  return [
    ...(result === undefined
      ? []
      : textBlock(
          "Result",
          [sentence(removalResultWords[result.is]), result.because].filter((one) => one !== "").join(": "),
        )),
    ...textBlock("Told to the patient", told ?? ""),
  ];
}

/** Each removal in a sentence or two, for a sheet that is short: rules, attempts, result and the nearest published chance. */
export function removalFacts(source: CaseSource): Line[] {
  const read = ledgerReader(source.ledger);
  return weighedIn(source).map(({ removal: { id, body }, canal }) => {
    const subject = removalSubject(id);
    const pieces = [
      rulesInWords(body) ?? "No stop rules",
      body.attempts.length === 0 ? "no attempt" : totalInWords(body),
      ...(body.result === undefined ? [] : [removalResultWords[body.result.is]]),
    ];
    const told = removalTold(read.entry(subject));
    const published = told === undefined ? [] : farthestChances(told, read, subject);
    return [
      { text: `${titled("Removal weighed", canal)}, ${momentWords(body.on, source.parts)}. ${pieces.join("; ")}.` },
      ...published,
    ];
  });
}

/** One group alone would choose its number: of several, the lowest and the highest share stand there. */
function farthestChances(told: Told, read: LedgerReader, subject: string): Line {
  const { sorted, of } = countedFirst(chancesOfCase(told, read, subject));
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (low === undefined || high === undefined) return [];
  if (low === high) return [{ text: " Published: " }, ...low.line, { text: "." }];
  const lead = ` Published, the lowest and the highest of ${sorted.length} groups of this case${of}: `;
  return [{ text: lead }, ...low.line, { text: "; " }, ...high.line, { text: "." }];
}
