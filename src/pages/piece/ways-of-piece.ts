import { outOfWords } from "../../core/diagnosis/plan/plain-chance.ts";
import type { RemovalTold } from "../../ledger/removal-told.ts";
import { consentWords } from "../consent/consent-words.ts";
import { type Block, type Line, type Page, type Run, says } from "../page-model.ts";
import { shortSource } from "../sections/sources.ts";
import { type PieceCase, placed } from "./piece-case.ts";
import { pieceWords, plainWays } from "./piece-words.ts";

type Weighed = NonNullable<PieceCase["weighed"]>;
type Way = RemovalTold["ways"][number];

/** Every way, none of them first among others: what it is, how it went for other people, and what those numbers can't say. */
export function waysOfPiece(of: PieceCase): Page {
  const { weighed } = of;
  const ways = (weighed?.told.ways ?? []).map((way, at) => wayBlock(of, way, at));
  const bare = Object.values(plainWays).map(
    ({ name, is }): Block => ({
      ...{ kind: "text", heading: name },
      lines: [says(is), says(pieceWords.noFigure)],
    }),
  );
  const blocks: Block[] =
    weighed === undefined ? [...bare, plainBlock(pieceWords.pieceAlone)] : [...ways, caveats(weighed)];
  return { title: pieceWords.ways, on: "", blocks, notes: [] };
}

const plainBlock = (text: string): Block => ({ kind: "text", lines: [says(text)] });

const caveats = ({ told }: Weighed): Block => ({
  kind: "text",
  lines: [
    says(consentWords.figures),
    says(pieceWords.notCompared),
    ...(told.figuresDecide ? [] : [says(pieceWords.close)]),
  ],
});

function wayBlock(of: PieceCase, way: Way, at: number): Block {
  const { name, is } = plainWays[way.way];
  const chances = [...comesOut(of, way), ...columnLines(of, way, at), ...hole(of, way)];
  const lines = chances.length === 0 ? [says(pieceWords.noFigure)] : chances;
  return { kind: "text", heading: name, lines: [says(is), ...lines] };
}

/** How it healed and whether the tooth was kept, each as people say it, with the series behind it in small letters. */
function columnLines(of: PieceCase, way: Way, at: number): Line[] {
  const { weighed } = of;
  if (weighed === undefined) return [];
  if (way.way === "extraction") return [says(pieceWords.definition)];
  return (["healed", "kept"] as const).flatMap((column): Line[] => {
    const estimate = way[column];
    if (estimate === undefined) return [];
    const said = placed(outOfWords(estimate.mean), `ways[${at}].${column}.mean`, weighed);
    return [sentence(pieceWords[column], said, seriesBehind(of, way, column))];
  });
}

const sentence = (begins: string, said: Run, behind: Run[]): Line => [
  { text: `${begins} ` },
  said,
  { text: ` ${pieceWords.ofPeople}.` },
  ...behind,
];

/** ` (68 of 112, Nevares 2012)`, small. */
function seriesBehind({ source }: PieceCase, { from }: Way, column: Way["from"][number]["column"]): Run[] {
  const rows = from.filter((row) => row.column === column && row.inSum);
  const told = rows.map(({ events, n, source: id }) => {
    const counts = events === undefined || n === undefined ? "" : `${events} of ${n}, `;
    return `${counts}${shortSource(id, source.references)}`;
  });
  return told.length === 0 ? [] : [{ text: ` (${[...new Set(told)].join("; ")})`, quiet: true }];
}

/** In how many people like this one the piece came out, by the series that the sum draws from. */
function comesOut({ weighed, source }: PieceCase, { way }: Way): Line[] {
  if (weighed === undefined || way !== "remove") return [];
  const at = weighed.told.removalChance.findIndex(
    ({ inSum, success, share }) => inSum && success === "removed" && share !== undefined,
  );
  const row = weighed.told.removalChance[at];
  if (row?.share === undefined) return [];
  const said = placed(outOfWords(row.share), `removalChance[${at}].share`, weighed);
  const counts = row.events === undefined || row.n === undefined ? "" : `${row.events} of ${row.n}, `;
  const behind = { text: ` (${counts}${shortSource(row.series, source.references)})`, quiet: true };
  return [sentence(pieceWords.comesOut, said, [behind])];
}

/** How often an attempt made a hole in the root. */
function hole({ weighed }: PieceCase, { way }: Way): Line[] {
  if (weighed === undefined || way !== "remove") return [];
  const { mean } = weighed.told.perforation.chance;
  return [sentence(pieceWords.hole, placed(outOfWords(mean), "perforation.chance.mean", weighed), [])];
}
