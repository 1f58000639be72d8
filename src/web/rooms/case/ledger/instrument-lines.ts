import { percentText } from "../../../../figures/chance-text.ts";
import { fitTold } from "../../../../ledger/fit-told.ts";
import { type ExplanationTold, fractureTold } from "../../../../ledger/fracture-told.ts";
import { instrumentTold } from "../../../../ledger/instrument-told.ts";
import { lifeTold } from "../../../../ledger/life-told.ts";
import { type RemovalTold, removalTold } from "../../../../ledger/removal-told.ts";
import { explanationWords } from "../../../../record/words/mishap-words.ts";
import { removalWayWords } from "../../../../record/words/removal-words.ts";
import { type Ends, numberInWords, withUnit } from "../../../parts/figures-in-words.ts";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import type { LedgerLine } from "./ledger-line.ts";

const mm = (value: number, digits = 1): string => withUnit(numberInWords(value, digits), "mm");
const percent = (share: number): string => withUnit(percentText(share), "%");
const percentEnds = ({ low, high }: Ends): string => `${percentText(low)}\u2013${percentText(high)}`;
const band = ({ low, high }: Ends, digits: number): string => {
  const [from, to] = [numberInWords(low, digits), numberInWords(high, digits)];
  return from === to ? from : `${from} to ${to}`;
};

/** The diameters of an instrument: at its tip, in the middle of its working part and at its end. */
export function instrumentLines(output: unknown): readonly LedgerLine[] {
  const told = instrumentTold({ output });
  const [tip] = told?.profile ?? [];
  const end = told?.profile.at(-1);
  if (told === undefined || tip === undefined || end === undefined) return [];
  const at = (place: number, name: string, one: typeof tip): LedgerLine => ({
    ...{ at: `profile[${place}].diameterMm`, name, value: mm(one.diameterMm, 2) },
    interval: `${numberInWords(one.low, 2)}\u2013${numberInWords(one.high, 2)}`,
  });
  return [
    { ...at(0, "At the tip", tip), value: `${mm(tip.diameterMm, 2)} at the tip` },
    at(told.profile.length - 1, `At ${numberInWords(end.atMm, 0)} mm`, end),
    { at: "toleranceMm", name: "Tolerance by the standard", value: mm(told.toleranceMm, 2) },
    { at: "colour", name: "Colour of its size", value: told.colour ?? "none: a custom size" },
  ];
}

const limitWords = { uses: "uses", turns: "turns", equivalentTurns: "equivalent turns" } as const;

/** The life that was used: bands over the published slopes, never a count that is left. */
export function lifeLines(output: unknown): readonly LedgerLine[] {
  const told = lifeTold({ subject: "", inputPaths: [], output });
  if (told === undefined) return [];
  const { turns, worstSection, over } = told;
  const swept = turns.swept === turns.net ? [] : [turnsLine("swept", "Turns, all turning added", turns.swept)];
  return [
    {
      at: "ratioToReference",
      name: "Wear, in minutes of the reference canal",
      value: withUnit(band(told.ratioToReference, 2), "ref. min"),
    },
    { at: "equivalentTurns", name: "Equivalent reference turns", value: band(told.equivalentTurns, 0) },
    turnsLine("net", "Turns, net", turns.net),
    ...swept,
    ...(worstSection === undefined
      ? []
      : [{ at: "worstSection.fromTipMm", name: "Worn most, from its tip", value: mm(worstSection.fromTipMm) }]),
    ...over.map(({ name, limit, found }) => ({
      ...{ at: `over ${name}`, name: `Over its limit of ${limitWords[name]}` },
      value: `${numberInWords(found, 0)}, limit ${numberInWords(limit, 0)}`,
    })),
  ];
}

const turnsLine = (which: "net" | "swept", name: string, turns: number): LedgerLine => ({
  ...{ at: `turns.${which}`, name, value: numberInWords(turns, 0) },
});

/** The instruments that a piece could be from, each with how far its measures lie off. */
export function fitLines(output: unknown): readonly LedgerLine[] {
  const told = fitTold({ output });
  if (told === undefined) return [];
  const { candidates } = told;
  const fits = candidates.filter(({ consistent }) => consistent).length;
  return [
    { at: "candidates", name: "Instruments that fit the piece", value: `${fits} of ${candidates.length}` },
    ...candidates.map(({ name, misfitSd, impossible }) => ({
      ...{ at: `candidate ${name}`, name },
      value:
        misfitSd === undefined
          ? sentenceInWords(impossible ?? "not comparable")
          : `${numberInWords(misfitSd, 1)} standard deviations off`,
    })),
  ];
}

/** The explanations of a break, the likeliest first, each with its prior. */
export function fractureLines(output: unknown): readonly LedgerLine[] {
  const told = fractureTold({ output });
  if (told === undefined) return [];
  const inOrder = told.explanations.toSorted((a, b) => b.posterior.mean - a.posterior.mean);
  const { fragmentLength } = told;
  return [
    ...likeliestLines(inOrder),
    ...inOrder.map(({ name, prior, posterior }) => ({
      at: `explanation ${name}`,
      name: `${capital(explanationWords[name])}, ${prior.n === undefined ? "its share assumed" : `${prior.n} of ${prior.N} in series`}`,
      value: percent(posterior.mean),
      interval: percentEnds(posterior.interval),
    })),
    { at: "weighsMost", name: "Weighs most", value: sentenceInWords(told.weighsMost) },
    ...(fragmentLength === undefined
      ? []
      : [
          {
            ...{ at: "fragmentLength.mm", name: "Length of the piece" },
            value: `${mm(fragmentLength.mm)}, longer than ${percent(fragmentLength.percentile)} of published ones`,
          },
        ]),
  ];
}

/** The explanation that the facts are most consistent with, and whether its interval stands apart from the next one's. */
function likeliestLines([likeliest, second]: readonly ExplanationTold[]): LedgerLine[] {
  if (likeliest === undefined) return [];
  const { mean, interval } = likeliest.posterior;
  const line = {
    ...{ at: "explanations", name: "Most consistent with" },
    value: `${explanationWords[likeliest.name]}, ${percent(mean)}`,
    interval: percentEnds(interval),
  };
  if (second === undefined || second.posterior.interval.high < interval.low) return [line];
  return [line, { at: "overlap", name: "The intervals overlap", value: "the facts do not decide" }];
}

/** What the removal of a piece would leave, and what each way brings, with the count that stands behind it. */
export function removalLines(output: unknown): readonly LedgerLine[] {
  const told = removalTold(output === undefined ? undefined : { output });
  if (told === undefined) return [];
  const { sightLine, platform, ways, figuresDecide } = told;
  return [
    {
      ...{ at: "figuresDecide", name: "The figures of the ways" },
      value: figuresDecide ? "differ beyond their intervals" : "figures do not decide",
    },
    ...wallLine("sightLine.wallLeftMm", "Wall left by a straight way", sightLine?.wallLeftMm),
    ...wallLine("platform.wallLeftMm", "Wall left around its head", platform?.wallLeftMm),
    ...ways.flatMap(({ way, healed, kept, from }) => [
      ...chanceLine(`${way} healed`, `${capital(removalWayWords[way])}: healed${countIn(from, "healed")}`, healed),
      ...(healed === undefined
        ? chanceLine(`${way} kept`, `${capital(removalWayWords[way])}: tooth kept${countIn(from, "kept")}`, kept)
        : []),
    ]),
  ];
}

type Way = RemovalTold["ways"][number];

/** The largest count that the sum draws from. */
function countIn(from: Way["from"], column: "healed" | "kept"): string {
  const counted = from.filter((one) => one.column === column && one.inSum && one.n !== undefined);
  const [most] = counted.toSorted((a, b) => (b.n ?? 0) - (a.n ?? 0));
  return most === undefined
    ? ""
    : `, ${most.events} of ${most.n} in ${counted.length > 1 ? "the largest" : "its"} series`;
}

const chanceLine = (at: string, name: string, chance: Way["kept"]): LedgerLine[] =>
  chance === undefined ? [] : [{ at, name, value: percent(chance.mean), interval: percentEnds(chance.interval) }];

const wallLine = (at: string, name: string, value: number | undefined): LedgerLine[] =>
  value === undefined ? [] : [{ at, name, value: value > 0 ? mm(value, 2) : "none" }];
