import type { RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";
import { freeArm, leftArm } from "./published-arms.ts";
import { isBelow } from "./wall-grade.ts";

type Chance = RemovalOutput["removalChance"][number];
type Weighed = Pick<RemovalOutput, "removalChance" | "sightLine" | "platform" | "perforation">;
type Reasons = RemovalOutput["reasons"];

/**
 * What speaks for and against taking the fragment out, in sentences with their numbers.
 * @source docs/methods/removal.md C15
 */
export function removalReasons(input: RemovalInput, weighed: Weighed): Reasons {
  const all = [
    ...groupReasons(weighed.removalChance),
    ...wallReasons(input, weighed),
    ...outcomeReasons(input),
    ...timeReasons(input),
    { speaks: "against" as const, says: perforationSays(weighed.perforation) },
  ];
  const said = (speaks: "for" | "against"): string[] =>
    all.filter((one) => one.speaks === speaks).map(({ says }) => says);
  return { for: said("for"), against: said("against") };
}

interface Reason {
  readonly speaks: "for" | "against";
  readonly says: string;
}

const whatCame = {
  removed: "were removed",
  removedOrBypassed: "were removed or bypassed",
  bypassed: "were bypassed",
  // Printed as failures: the others.
  notStated: "did not fail",
};

/** Shares that lie nearer together say nothing for or against. */
const apart = 0.05;

/** A group speaks for an attempt where more came out of it than of its whole series. */
function groupReasons(chances: readonly Chance[]): Reason[] {
  return chances.flatMap((row) => {
    const whole = chances.find(({ series, by }) => series === row.series && by === "all");
    if (row.by === "all" || row.matches !== "yes" || row.share === undefined) return [];
    const share = whole?.share ?? wholeShare(chances, row.series);
    const of = whole?.share === undefined ? "in the whole series" : `${countSays(whole)} in the whole series`;
    const says = `This case belongs to: ${row.group}. ${countSays(row)} ${whatCame[row.success]} (${row.series}); ${
      whole?.share === undefined ? `${asPercent(share)} ${of}` : of
    }.`;
    if (Math.abs(row.share - share) < apart) return [];
    return [{ speaks: row.share > share ? ("for" as const) : ("against" as const), says }];
  });
}

/** Of a series that is known by its groups alone. */
function wholeShare(chances: readonly Chance[], series: string): number {
  const rows = chances.filter((row) => row.series === series && row.n !== undefined);
  const sum = (value: (row: Chance) => number): number => rows.reduce((total, row) => total + value(row), 0);
  return sum(({ events = 0 }) => events) / sum(({ n = 0 }) => n);
}

const countSays = ({ events, n, share = 0 }: Chance): string =>
  events === undefined || n === undefined ? `${asPercent(share)} (count not printed)` : `${events} of ${n}`;

const asPercent = (share: number): string => `${(100 * share).toFixed(0)} %`;

function wallReasons({ limits }: RemovalInput, { sightLine, platform }: Weighed): Reason[] {
  const least = limits?.wallLeftMm;
  const path = sightLine?.path;
  const left = platform?.wallLeftMm;
  const limitsSay = least === undefined ? "" : ` Your limit is ${least} mm.`;
  const graded = platform?.grade === "recommended" ? ("for" as const) : ("against" as const);
  return [
    ...(path === undefined || path.verdict === "wall not known"
      ? []
      : [{ speaks: isAmple(sightLine) ? ("for" as const) : ("against" as const), says: path.says }]),
    ...(left === undefined
      ? []
      : [
          {
            speaks: least === undefined ? graded : isBelow(left, least) ? ("against" as const) : ("for" as const),
            says: `A platform of ${platform?.widthMm.toFixed(2)} mm leaves ${left.toFixed(2)} mm on the ${platform?.side} side: ${platform?.grade} by limits of 0.3 and 1 mm (both from memory).${limitsSay}`,
          },
        ]),
  ];
}

function isAmple(sightLine: Weighed["sightLine"]): boolean {
  if (sightLine?.path.verdict === "above the limit") return true;
  return sightLine?.path.verdict === "no limit set" && (sightLine.wallLeftMm ?? 0) >= 1;
}

function outcomeReasons({ lesion, stage }: RemovalInput): Reason[] {
  const [left, free] = matchedShares(lesion);
  const points = (100 * (free - left)).toFixed(1);
  const healed = `${inTenths(left)} healed with a fragment left and ${inTenths(free)} without one: ${points} points between them`;
  const beforeCleaned = stage === "beforeCleaning" || stage === "partlyCleaned";
  return [
    { speaks: lesion === "present" ? "for" : "against", says: matchedSays(lesion, healed) },
    ...(beforeCleaned
      ? [
          {
            speaks: "for" as const,
            says: "The canal beyond the fragment was not cleaned when it broke (common practice: the earlier, the more it matters).",
          },
        ]
      : []),
    ...(stage === "cleaned"
      ? [
          {
            speaks: "against" as const,
            says: "The canal had been cleaned when it broke: less is left to gain (common practice).",
          },
        ]
      : []),
  ];
}

const inAll = "134 of 146 and 138 of 146";

/** A share without a lesion before is printed nowhere: that it is reckoned is said. */
function matchedSays(lesion: RemovalInput["lesion"], healed: string): string {
  if (lesion === undefined) return `In matched teeth ${healed} (spili-2005: ${inAll}).`;
  const all = `in all ${inAll}`;
  if (lesion === "present")
    return `In matched teeth with a lesion before ${healed} (spili-2005; their counts are not printed; ${all}).`;
  return `In matched teeth with no lesion before about ${healed} (spili-2005; not printed: reckoned from what it prints of teeth with a lesion, each count that fits as likely; ${all}).`;
}

/** As printed; without a lesion before, where nothing is printed, at the means of what the printed figures allow. */
function matchedShares(lesion: RemovalInput["lesion"]): [left: number, free: number] {
  const arms = [leftArm(lesion), freeArm(lesion)] as const;
  if (lesion === "absent") return [arms[0].mean, arms[1].mean];
  const printed = (arm: (typeof arms)[number]): number =>
    arm.from.find(({ inSum, n }) => inSum && (lesion === undefined || n === undefined))?.share ?? arm.mean;
  return [printed(arms[0]), printed(arms[1])];
}

const inTenths = (share: number): string => `${(100 * share).toFixed(1)} %`;

function timeReasons({ minutesSpent, limits }: RemovalInput): Reason[] {
  if (minutesSpent === undefined || minutesSpent === 0) return [];
  const rule = limits?.minutes;
  const spent = `${minutesSpent} minutes have been spent`;
  const fell = "success fell with the time spent (suter-2005; no count by time was read)";
  if (rule === undefined) return [{ speaks: "against", says: `${spent}; ${fell}.` }];
  const by = Math.abs(minutesSpent - rule);
  const stands = minutesSpent < rule ? `${by} below` : `${by} above`;
  return [{ speaks: "against", says: `${spent}, ${stands} the rule of ${rule} minutes; ${fell}.` }];
}

function perforationSays({ from }: RemovalOutput["perforation"]): string {
  const counts = from.flatMap(({ source, column, events, n, says }) =>
    column === "healed" && says.startsWith("perforated") ? [`${events} of ${n} (${source})`] : [],
  );
  return `An attempt may perforate the root: ${counts.join(", ")}.`;
}
