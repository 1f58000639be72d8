import { visitTimeline } from "../../figures/visit-timeline.ts";
import { anaestheticSubject, anaestheticTold } from "../../ledger/anaesthetic-told.ts";
import { irrigationSubject, irrigationsTold } from "../../ledger/irrigation-told.ts";
import { limitInWords, nearestLimit, zoneInWords } from "../../ledger/solvent-in-words.ts";
import { solventNamed, solventsOf } from "../../ledger/solvent-named.ts";
import { type SolventTold, solventSubject, solventTold } from "../../ledger/solvent-told.ts";
import { visitTimelineOf } from "../../record/chairside/visit-timeline.ts";
import type { PartOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { type Block, type Line, type Run, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { vapourFigure } from "../solvent-figures.ts";

type Visit = PartOf<"visit">;

/** What a visit's amounts come to against published limits, and one drawing; nothing where no sum says anything. */
export function visitSums(visit: Visit, source: CaseSource): Block[] {
  const lines = sumLines(visit, source);
  return lines.length === 0 ? [] : [drawing(visit, source), { kind: "text", heading: "Against limits", lines }];
}

/**
 * The sums of a visit in a line each: anaesthetic, solvents, clashes. Totals of irrigants stand beside them and are no reason
 * for lines of their own.
 */
function sumLines(visit: Visit, source: CaseSource): readonly Line[] {
  const about = againstLimits(visit, source);
  return about.length === 0 ? [] : [...about, ...totals(visit, source.ledger, ledgerReader(source.ledger))];
}

/** What a visit's anaesthetic and solvents came to against published limits, and which irrigants met, in a line each. */
export function againstLimits(visit: Visit, { ledger }: CaseSource): readonly Line[] {
  const read = ledgerReader(ledger);
  if (!isSummed(visit, ledger)) return [];
  return [...anaesthetic(visit, ledger, read), ...solvents(visit, ledger, read), ...clashes(visit, ledger)];
}

/** Whether a sum says something that the visit's own page does not. */
const isSummed = (visit: Visit, ledger: Ledger): boolean =>
  (visit.body.anaesthetic.length > 0 && anaestheticTold(ledger, visit.id)?.output !== undefined) ||
  toldSolvents(visit, ledger).some(({ output }) => output !== undefined) ||
  clashes(visit, ledger).length > 0;

type Ledger = CaseSource["ledger"];

/** The air where a solvent was used, the visit over its minutes otherwise. */
function drawing(visit: Visit, { ledger, theme }: CaseSource): Block {
  const solvent = toldSolvents(visit, ledger).find(({ output }) => output !== undefined);
  if (solvent?.output !== undefined) {
    const doses = visit.body.solvent.filter((dose) => solventNamed(dose) === solvent.name);
    const figure = vapourFigure(solvent.output, doses, { theme, widthPx: 1_000 });
    return { kind: "figure", figure, caption: "Solvent in the air over the visit" };
  }
  const figure = visitTimeline({ ...visitTimelineOf(visit.body), withoutMinute: [], theme, widthPx: 800 });
  return { kind: "figure", figure, caption: "The visit over its minutes" };
}

function anaesthetic({ id, body }: Visit, ledger: Ledger, read: LedgerReader): Line[] {
  const told = anaestheticTold(ledger, id);
  if (told === undefined || body.anaesthetic.length === 0) return [];
  if (told.why !== undefined) return [says(`Local anaesthetic, not summed: ${withoutRemedy(told.why)}.`)];
  const { limitSet, overLimit } = told.output;
  const share = read.number(anaestheticSubject(id), "fractionSum", 2) ?? { text: "–" };
  const over = overLimit ? "; a limit was passed" : "";
  return [[{ text: "Local anaesthetic: " }, share, { text: ` of the limit, by ${limitSet.says}${over}.` }]];
}

/** Why a sum is missing, for a reader: what is to be entered stands after it, for whoever is at the page. */
const withoutRemedy = (why = ""): string => why.split("; ")[0] ?? why;

/** The solvents of a visit with what the ledger says of each. */
function toldSolvents({ id, body }: Visit, ledger: Ledger) {
  const names = [...new Set(solventsOf(body))];
  return [undefined, ...names].flatMap((name) => {
    const told = solventTold(ledger, id, name);
    return told === undefined ? [] : [{ ...told, name: name ?? names[0] ?? "", subject: solventSubject(id, name) }];
  });
}

const solvents = (visit: Visit, ledger: Ledger, read: LedgerReader): Line[] =>
  toldSolvents(visit, ledger).map(({ why, output, name, subject }) =>
    output === undefined
      ? says(`${sentence(name)}, not summed: ${withoutRemedy(why)}.`)
      : solventLine(output, name, { read, subject }),
  );

function solventLine(
  told: SolventTold,
  name: string,
  { read, subject }: { read: LedgerReader; subject: string },
): Line {
  const nearest = nearestLimit(told);
  if (nearest === undefined) return says(`${sentence(name)}: no list that was read sets a limit for it.`);
  const at = `limits[${told.limits.indexOf(nearest)}]`;
  const ratio = (path: string): Run => read.number(subject, `${at}.${path}`, digitsFor(nearest.ratio)) ?? { text: "–" };
  const within: Run[] =
    nearest.ratioWithin === undefined
      ? []
      : [
          { text: " (" },
          ratio("ratioWithin.low"),
          { text: " to " },
          ratio("ratioWithin.high"),
          { text: " over the rates)" },
        ];
  const rest = `, in ${zoneInWords(told, nearest.zone)}.`;
  return [{ text: `${sentence(name)}: ` }, ratio("ratio"), ...within, { text: ` of ${limitInWords(nearest)}${rest}` }];
}

/** Two figures that say something, of small and of large ratios. */
const digitsFor = (ratio: number): number => (ratio >= 10 ? 0 : ratio >= 0.1 ? 2 : 4);

const clashes = ({ id }: Visit, ledger: Ledger): Line[] =>
  irrigationsTold(ledger, id).flatMap(({ output, canal }) =>
    (output?.clashes ?? []).map(({ first, second, what }) =>
      says(`${sentence(first)} met ${second}${canal === undefined ? "" : ` in ${canal}`}: ${what}`),
    ),
  );

/** What was given for all canals counts in each of them: said, so that nobody adds it up twice. */
const headOfTotals = (canal: string | undefined, isByCanal: boolean): string =>
  canal === undefined
    ? `Irrigants${isByCanal ? " for all canals" : ""}: `
    : `Irrigants in ${canal}, those for all with it: `;

function totals({ id }: Visit, ledger: Ledger, read: LedgerReader): Line[] {
  const told = irrigationsTold(ledger, id);
  const isByCanal = told.some(({ canal }) => canal !== undefined);
  return told.flatMap(({ output, canal }): Line[] => {
    const subject = irrigationSubject(id, canal);
    const runs = (output?.totals ?? []).flatMap(({ solution }, at): Run[] => {
      const volume = read.number(subject, `totals[${at}].volumeMl`, 1) ?? { text: "–" };
      const minutes = read.number(subject, `totals[${at}].minutes`, 1) ?? { text: "–" };
      return [{ text: `${at === 0 ? "" : "; "}${solution} ` }, volume, { text: " ml in " }, minutes, { text: " min" }];
    });
    return runs.length === 0 ? [] : [[{ text: headOfTotals(canal, isByCanal) }, ...runs, { text: "." }]];
  });
}
