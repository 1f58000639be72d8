import { removalInput } from "../core/instrument/removal-input.ts";
import { attemptsClock } from "../figures/attempts-clock.ts";
import { platformSection } from "../figures/platform-section.ts";
import { removalChances } from "../figures/removal-chances.ts";
import { sightLine } from "../figures/sight-line.ts";
import type { Figure } from "../figures/svg-tree.ts";
import type { ThemeName } from "../figures/theme.ts";
import { tornado } from "../figures/tornado.ts";
import { waysSideBySide } from "../figures/ways-side-by-side.ts";
import type { RemovalTold } from "../ledger/removal-told.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf } from "../record/parts.ts";
import {
  movedWords,
  pathWords,
  removalToolWords,
  removalWayWords,
  seriesByWords,
  seriesCountedWords,
  wallSideWords,
} from "../record/words/removal-words.ts";
import { sentence } from "./sentence.ts";
import { sourceName, sourceWithStar } from "./source-name.ts";

/** How a drawing of a removal is shown. */
interface Shown {
  readonly theme: ThemeName;
  readonly widthPx: number;
  readonly letters?: number;
}

const markWords = { seen: "read", memory: "from memory", "common practice": "common practice" } as const;

/** The ways beside each other, each with the series that its figures are drawn from; `bare` without what each is taken to be. */
export const waysFigure = (
  { ways }: Pick<RemovalTold, "ways">,
  { bare = false, ...shown }: Shown & { readonly bare?: boolean },
): Figure =>
  waysSideBySide({
    ways: ways.map(({ way, steps, healed, kept, from }, at) => ({
      ...{
        way: sentence(removalWayWords[way]),
        words: bare ? undefined : steps,
        healed: drawn(healed),
        kept: drawn(kept),
        keptAsAbove: isSameKept(ways[at], ways[at - 1]),
      },
      from: seriesBehind(from),
    })),
    ...shown,
  });

type Way = RemovalTold["ways"][number];

/** The ways as a patient is shown them: by plain names, without series, and without the one that leaves no tooth to heal. */
export const plainWaysFigure = (
  { ways }: Pick<RemovalTold, "ways">,
  {
    nameOf,
    headings,
    asAbove,
    ...shown
  }: Shown & { nameOf: (way: Way["way"]) => string; headings: { healed: string; kept: string }; asAbove: string },
): Figure =>
  waysSideBySide({
    ways: ways
      .filter(({ healed }) => healed !== undefined)
      .map(({ way, healed, kept }, at, shown) => ({
        ...{ way: nameOf(way), healed: drawn(healed), kept: drawn(kept), from: "" },
        keptAsAbove: isSameKept(shown[at], shown[at - 1]),
      })),
    ...{ headings, asAbove },
    ...shown,
  });

/** Whether two ways are told by one figure for the tooth that is kept, from the very same series. */
function isSameKept(way: Way | undefined, above: Way | undefined): boolean {
  if (way?.kept === undefined || above?.kept === undefined) return false;
  const told = ({ kept, from }: Way): string =>
    JSON.stringify([kept?.mean, kept?.interval, from.filter(({ column, inSum }) => column === "kept" && inSum)]);
  return told(way) === told(above);
}

/** What holds by definition has no interval to draw. */
const drawn = (share: Way["healed"]) =>
  share?.interval.low === share?.interval.high && share !== undefined ? { mean: share.mean } : share;

/** The series that a way's figures are drawn from, each once; those that print no counts only where no others are. */
function seriesBehind(from: Way["from"]): string {
  const rows = from.filter(({ inSum }) => inSum);
  const counted = rows.filter(({ n }) => n !== undefined);
  return [...new Set((counted.length > 0 ? counted : rows).map(seriesWords))].join("; ");
}

/** `Spili 2005, 134/146`, with a star where it was recalled. */
const seriesWords = (row: Way["from"][number]): string => {
  const counts = row.events === undefined || row.n === undefined ? "" : `, ${row.events}/${row.n}`;
  return `${sourceWithStar(row)}${counts}`;
};

/** Published chances of getting a piece out, as n/N with intervals. */
export const chancesFigure = (rows: RemovalTold["removalChance"], shown: Shown): Figure =>
  removalChances({
    rows: rows.map(({ by, group, success, events, n, share, interval, matches, series, mark }) => ({
      ...{ by: seriesByWords[by], words: `${sentence(group)}, ${seriesCountedWords[success]}`, events, n, share },
      ...{ low: interval?.low, high: interval?.high, matches, source: sourceName(series), mark: markWords[mark] },
    })),
    ...shown,
  });

/** A difference of shares in points of percent, to a tenth. */
const points = (share: number): number => Number((100 * share).toFixed(1));

/** What drives the difference of a way to leaving the piece, in points of percent. */
export const driversFigure = ({ way, difference, inputs }: RemovalTold["drivers"][number], shown: Shown): Figure =>
  tornado({
    ...{ of: `bone heals: ${removalWayWords[way]}, less ${removalWayWords.leave}`, unit: "points of percent" },
    base: points(difference.mean),
    drivers: inputs.map(({ name, low, high, differenceAtLow, differenceAtHigh }) => ({
      ...{ name: sentence(name), low: low.toFixed(2), high: high.toFixed(2) },
      ...{ atLow: points(differenceAtLow), atHigh: points(differenceAtHigh) },
    })),
    ...shown,
  });

/** The canal with the straight line to the piece; undefined where no course is known. */
export function sightFigure(entry: LedgerEntry | undefined, told: RemovalTold, shown: Shown): Figure | undefined {
  const asked = removalInput.safeParse(entry?.input).data;
  const { sightLine: line } = told;
  const course = asked?.course;
  const traced = course !== undefined && "points" in course ? course.points : undefined;
  const headDepthMm = asked?.fragment.headDepthMm;
  if (line === undefined || traced === undefined || headDepthMm === undefined) return undefined;
  return sightLine({
    course: traced,
    ...{ headDepthMm, orificeShiftMm: asked?.orificeShiftMm },
    maxOffset: { mm: line.maxOffsetMm, atMm: line.offsetAtMm },
    walls: line.sides.map(({ side, dentineToCutMm, wallLeftMm }) => ({
      ...{ side: wallSideWords[side], toCutMm: dentineToCutMm, leftMm: wallLeftMm },
    })),
    verdict: pathWords[line.path.verdict],
    ...shown,
  });
}

/** The root's section at the piece with the platform in it; undefined where canal or walls are not known. */
export function platformFigure(entry: LedgerEntry | undefined, told: RemovalTold, shown: Shown): Figure | undefined {
  const asked = removalInput.safeParse(entry?.input).data;
  const { platform } = told;
  if (platform === undefined || platform.sides.length === 0 || asked?.canalDiameterMm === undefined) return undefined;
  return platformSection({
    ...{ canalMm: asked.canalDiameterMm, platformMm: platform.widthMm, offCentreMm: asked.offCentreMm },
    walls: platform.sides.map(({ side, wallMm, wallLeftMm }) => ({ side, mm: wallMm, left: wallLeftMm })),
    limits: platform.limits.map(({ source, limitMm, mark }) => ({
      mm: limitMm,
      words: mark === "own" ? "your own limit" : sourceWithStar({ source, mark }),
    })),
    ...shown,
  });
}

/** The attempts end to end against the minutes that were set before; `began` says when each one did. */
export const attemptsFigure = (
  { attempts, stopRules }: Pick<BodyOf<"removal">, "attempts" | "stopRules">,
  began: (at: string) => string,
  shown: Shown,
): Figure =>
  attemptsClock({
    attempts: attempts.map(({ at, minutes, tool, moved }) => ({
      ...{ at: began(at), minutes, tool: removalToolWords[tool], moved: movedWords[moved] },
    })),
    stopAfterMin: stopRules?.minutes,
    ...shown,
  });
