import type { RemovalTold } from "../../ledger/removal-told.ts";
import { inOneLine } from "../consent/consent-case.ts";
import { consentWords } from "../consent/consent-words.ts";
import { type Block, type Line, type Page, type Run, says } from "../page-model.ts";
import { plainWaysFigure } from "../removal-figures.ts";
import { shortSource } from "../sections/sources.ts";
import { endsOfChance } from "./ends-of-chance.ts";
import { ofHundred } from "./of-hundred.ts";
import { type PieceCase, placed } from "./piece-case.ts";
import { pieceWords, plainWays } from "./piece-words.ts";

type Weighed = NonNullable<PieceCase["weighed"]>;
type Way = RemovalTold["ways"][number];
type From = Way["from"][number];

/**
 * Every way, none of them first among others: what it is, how it went for other people, and what those numbers can't say.
 * Once it is over, they are told as what was weighed.
 */
export function waysOfPiece(of: PieceCase): Page {
  const { weighed, removal } = of;
  const isOver = removal.result !== undefined;
  const ways = (weighed?.told.ways ?? []).map((way, at) => wayBlock(of, way, at));
  const bare = Object.values(plainWays).map(
    ({ name, is }): Block => ({
      ...{ kind: "text", heading: name },
      lines: [says(is), says(pieceWords.noFigure)],
    }),
  );
  const told: Block[] =
    weighed === undefined ? [...bare, plainBlock(pieceWords.pieceAlone)] : [...ways, caveats(weighed)];
  const blocks = [...(isOver ? [plainBlock(pieceWords.asKnown)] : []), ...told];
  return { title: isOver ? pieceWords.waysWeighed : pieceWords.ways, on: "", blocks, notes: [] };
}

/** The ways drawn beside each other, in their order; none where nothing could be computed. */
export function waysDrawn({ weighed }: PieceCase): Page[] {
  if (weighed === undefined) return [];
  const figure = plainWaysFigure(weighed.told, {
    ...{ theme: "print", widthPx: 900, letters: 1.3, nameOf: (way) => plainWays[way].name },
    headings: { healed: pieceWords.boneHealed, kept: pieceWords.toothThere },
    asAbove: pieceWords.asAbove,
  });
  const blocks: Block[] = [{ kind: "figure", figure, caption: pieceWords.drawn }];
  return [{ title: pieceWords.others, on: "", blocks, notes: [] }];
}

const plainBlock = (text: string): Block => ({ kind: "text", lines: [says(text)] });

const caveats = ({ told }: Weighed): Block => ({
  kind: "text",
  lines: [
    inOneLine([
      says(consentWords.figures),
      says(pieceWords.notCompared),
      ...(told.figuresDecide ? [] : [says(pieceWords.close)]),
    ]),
  ],
});

function wayBlock(of: PieceCase, way: Way, at: number): Block {
  const { name, is } = plainWays[way.way];
  const chances = [...worked(of, way), ...columnLines(of, way, at), ...hole(of, way)];
  const lines = chances.length === 0 ? [says(pieceWords.noFigure)] : chances;
  return { kind: "text", heading: name, lines: [says(is), inOneLine(lines)] };
}

/** How it healed and whether the tooth was kept, each as people say it, with the series behind it in small letters. */
function columnLines(of: PieceCase, way: Way, at: number): Line[] {
  const { weighed } = of;
  if (weighed === undefined) return [];
  if (way.way === "extraction") return [says(pieceWords.definition)];
  return (["healed", "kept"] as const).flatMap((column): Line[] => {
    const estimate = way[column];
    if (estimate === undefined) return [];
    const said = placed(ofHundred(estimate.mean), `ways[${at}].${column}.mean`, weighed);
    return [
      sentence(
        pieceWords[column],
        said,
        seriesBehind(
          of,
          way.from.filter((row) => row.column === column && !isOfHole(row)),
        ),
      ),
    ];
  });
}

const sentence = (begins: string, said: Run, behind: Run[]): Line => [
  { text: `${begins} ` },
  said,
  { text: ` ${pieceWords.ofPeople}.` },
  ...behind,
];

/** ` (68 of 112, Nevares 2012)`, small; series that print no counts only where no others are. */
function seriesBehind({ source }: PieceCase, rows: readonly From[]): Run[] {
  const inSum = rows.filter((row) => row.inSum);
  const counted = inSum.filter(({ n }) => n !== undefined);
  const told = (counted.length > 0 ? counted : inSum).map((row) => {
    const counts = row.events === undefined || row.n === undefined ? "" : `${row.events} of ${row.n}, `;
    return `${counts}${shortSource(row.source, source.references)}`;
  });
  return told.length === 0 ? [] : [{ text: ` (${[...new Set(told)].join("; ")})`, quiet: true }];
}

/** In how many people like this one a try worked; where studies differ, the least and the most. */
function worked(of: PieceCase, { way }: Way): Line[] {
  const { weighed, source } = of;
  if (weighed === undefined || way !== "remove") return [];
  const ends = endsOfChance(weighed.told);
  const says = ends.map(({ at, share }) => placed(ofHundred(share), `removalChance[${at}].share`, weighed));
  const begins =
    says[0]?.text === says[1]?.text ? [pieceWords.worked] : [pieceWords.workedInOne, pieceWords.workedInAnother];
  const lines = (says.length === 1 ? [pieceWords.worked] : begins).flatMap((words, index): Line[] => {
    const [said, end] = [says[index], ends[index]];
    if (said === undefined || end === undefined) return [];
    const behind = ` (${end.events} of ${end.n}, ${shortSource(end.series, source.references)})`;
    return [sentence(words, said, [{ text: behind, quiet: true }])];
  });
  return lines.length === 0 ? [] : [...lines, [{ text: pieceWords.toWork }]];
}

/** Whether a series counted holes, not how they healed. */
const isOfHole = ({ says: told }: From): boolean => told.startsWith("perforated");

/** How often an attempt made a hole in the root. */
function hole(of: PieceCase, { way }: Way): Line[] {
  const { weighed } = of;
  if (weighed === undefined || way !== "remove") return [];
  const { chance, from } = weighed.told.perforation;
  const made = from.filter(isOfHole);
  const said = placed(ofHundred(chance.mean), "perforation.chance.mean", weighed);
  return [sentence(pieceWords.hole, said, seriesBehind(of, made))];
}
