import { z } from "zod";
import { fullSigmas, noiseSigmas } from "../../figures/difference-scale.ts";
import { lesionThenAndNow } from "../../figures/lesion-then-and-now.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type FilmBlock, type Line, type Page, says } from "../page-model.ts";

const outline = z.array(z.tuple([z.number(), z.number()]));
const compared = z.looseObject({
  comparable: z.boolean(),
  statement: z.string(),
  cautions: z.array(z.string()),
  differenceSigma: z.number().optional(),
  carried: z.looseObject({ afterOnBefore: outline.optional() }),
  others: z.array(z.looseObject({ name: z.string(), afterOnBefore: outline.optional() })),
});

/** A comparison that was computed, with its films. */
interface TwoDates {
  readonly subject: string;
  readonly entry: LedgerEntry;
  readonly read: z.infer<typeof compared>;
  readonly before: PartOf<"film">;
  readonly after: PartOf<"film">;
}

/** A page for each comparison that was computed: before, after laid on it, what changed, and by how much. */
export const comparisonPages = (source: CaseSource): Page[] => twoDatesOf(source).map((one) => pageOf(one, source));

/** The same for print: of the films that compare, the two whose lesion was measured last. */
export function comparisonOnPaper(source: CaseSource): Page[] {
  const told = twoDatesOf(source).filter(({ read }) => read.comparable);
  const one = told.findLast(({ entry }) => ratioOf(entry) !== undefined) ?? told.at(-1);
  return one === undefined ? [] : [pageOf(one, source)];
}

function twoDatesOf({ parts, ledger }: CaseSource): TwoDates[] {
  const films = partsOf(parts, "film");
  const all = partsOf(parts, "comparison").flatMap(({ id, body }): TwoDates[] => {
    const subject = `compareFilms of ${id}`;
    const entry = ledger.find((one) => one.subject === subject);
    const read = compared.safeParse(entry?.output).data;
    const [before, after] = [body.before, body.after].map((film) => films.find((one) => one.id === film));
    if (entry === undefined || read === undefined || before === undefined || after === undefined) return [];
    return [{ subject, entry, read, before, after }];
  });
  return all.sort((a, b) => (a.after.body.takenOn < b.after.body.takenOn ? -1 : 1));
}

function ratioOf({ output }: LedgerEntry): unknown {
  return typeof output === "object" && output !== null ? Reflect.get(output, "areaRatio") : undefined;
}

function pageOf(one: TwoDates, source: CaseSource): Page {
  const { entry, before, after } = one;
  const days = [before, after].map(({ body }) => momentWords(body.takenOn, source.parts));
  return {
    title: "Two dates compared",
    subtitle: days.join(" and "),
    on: after.body.takenOn,
    blocks: [...picturesOf(one, source, days), wordsOf(one, source)],
    notes: [`${source.methods.get(entry.topic) ?? entry.topic} Ledger ${entry.id.slice(0, 12)}.`],
  };
}

function picturesOf(one: TwoDates, source: CaseSource, [then = "", now = ""]: readonly string[]): Block[] {
  const { entry, read, before } = one;
  const { columns, rows, hash, view } = before.body;
  const own = lesionsBefore(entry, source.parts);
  const later = [read.carried.afterOnBefore, ...read.others.map(({ afterOnBefore }) => afterOnBefore)];
  const outlines = { before: own, after: later.flatMap((found) => (found === undefined ? [] : [found])) };
  const film = (shown: typeof outlines, caption: string, more: Partial<FilmBlock> = {}): FilmBlock => {
    const overlay = lesionThenAndNow({ columns, rows, ...shown });
    const window = { centre: view?.windowCentre ?? 0, width: view?.windowWidth ?? 1, invert: view?.invert ?? false };
    return {
      ...{ kind: "film", hash, columns, rows, overlay, caption: says(caption) },
      ...(view === undefined ? {} : { window }),
      alternative: `${caption}. ${overlay.alternative}`,
      ...more,
    };
  };
  const aligned = { ledgerEntry: entry.id, picture: "aligned" } as const;
  const changed = { ledgerEntry: entry.id, picture: "difference" } as const;
  return [
    film({ before: outlines.before, after: [] }, `Before: ${then}`),
    film(outlines, `After: ${now}, laid on the first film`, { compared: aligned }),
    ...(read.differenceSigma === undefined
      ? []
      : [
          film(outlines, "After less before", {
            compared: changed,
            window: asItIs,
            caption: differenceLine(one, source),
          }),
        ]),
  ];
}

/** What the greys of a difference stand for; its noise is a number of the entry. */
function differenceLine({ subject }: TwoDates, { ledger }: CaseSource): Line {
  const sigma = ledgerReader(ledger).number(subject, "differenceSigma", 3);
  const [first, second] = [
    "After less before: brighter is more mineral in the beam, darker less. Middle grey: ",
    `within ${noiseSigmas} standard deviations of the noise, each `,
  ];
  if (sigma === undefined) return says(first);
  return [{ text: first + second }, sigma, { text: ` of the full range; white and black: from ${fullSigmas} on` }];
}

/** Middle grey of a difference is no change, whatever the window of the film. */
const asItIs = { centre: 128, width: 256, invert: false } as const;

function lesionsBefore({ inputPaths }: LedgerEntry, parts: readonly Part[]): readonly [number, number][][] {
  const from = inputPaths.filter(({ input }) => input.endsWith(".before")).map(({ record }) => record);
  return partsOf(parts, "mark").flatMap(({ id, body }) =>
    body.shape === "outline" && from.includes(`${id}/points`) ? [body.points] : [],
  );
}

function wordsOf({ subject, read, entry }: TwoDates, source: CaseSource): Block {
  const reader = ledgerReader(source.ledger);
  const what = source.parts.flatMap((part) =>
    part.kind === "mark" && part.body.shape === "outline" && isLesionOf(entry, part.id) ? [part.body.what] : [],
  );
  const lines: Line[] = [
    ...(reader.number(subject, "areaRatio", 2) === undefined
      ? []
      : [
          [
            ...reader.withInterval(subject, "areaRatio", { digits: 2, unit: "" }),
            { text: ` of the area that ${lesionWords(what[0])} had before` },
          ],
        ]),
    ...read.others.map((other, index): Line => otherLine(reader, subject, other.name, index)),
    says(read.statement),
    ...offBy(reader, subject),
    ...read.cautions.map(says),
  ];
  return { kind: "text", heading: read.comparable ? "What changed" : "These films can't be compared", lines };
}

const isLesionOf = ({ inputPaths }: LedgerEntry, mark: string): boolean =>
  inputPaths.some(({ input, record }) => input === "lesions.before" && record === `${mark}/points`);

const lesionWords = (what: string | undefined): string =>
  what === undefined || what === "" ? "the lesion" : `the ${what.charAt(0).toLowerCase()}${what.slice(1)}`;

function otherLine(reader: LedgerReader, subject: string, name: string, index: number): Line {
  const ratio = reader.number(subject, `others[${index}].areaRatio`, 2);
  if (ratio === undefined) return says(`${name}: outlined on one film only`);
  return [ratio, { text: ` of its area before: ${name}` }];
}

/** How far pieces of the films lie off, in mm where the first film has a scale. */
function offBy(reader: LedgerReader, subject: string): Line[] {
  const mm = reader.number(subject, "residualMm", 2);
  const px = reader.number(subject, "residualPx", 1);
  const found = mm === undefined ? px : mm;
  if (found === undefined) return [];
  return [
    [
      { text: "Pieces of the films lie off by ", quiet: true },
      found,
      { text: mm === undefined ? " px" : " mm", quiet: true },
    ],
  ];
}
