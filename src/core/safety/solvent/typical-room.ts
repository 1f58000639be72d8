import baldwin from "../../../../data/baldwin-maynard-1998/source.json" with { type: "json" };
import ren from "../../../../data/ren-2021/source.json" with { type: "json" };
import scotland from "../../../../data/scotland-ventilation-2021/source.json" with { type: "json" };

/** A figure of a room that may be taken where one's own is not known, and where it comes from. */
export interface TypicalFigure {
  readonly value: number;
  /** What it is, in a few words. */
  readonly says: string;
  /** A folder of data/; absent for an assumption. */
  readonly source?: string;
  readonly mark: "seen" | "assumption";
}

const [fewest = 0, most = 0] = ren.airChangesPerHour;
const measured = `measured in ${ren.rooms} dental treatment rooms`;

/**
 * Figures of dental rooms, to be offered and never filled in.
 * @source Ren and others 2021, the Scottish requirement of 2021, Baldwin and Maynard 1998 (seen); the rest are assumptions
 */
export const typicalRoom = {
  volumeM3: [{ value: 31.2, says: "3 x 4 x 2.6 m; no typical volume is published", mark: "assumption" }],
  airChangesPerHour: [
    { value: fewest, says: `the fewest ${measured}`, source: ren.id, mark: "seen" },
    {
      value: scotland.averageAirChangesPerHour,
      says: "average in Scotland in 2021",
      source: scotland.id,
      mark: "seen",
    },
    {
      value: scotland.leastAirChangesPerHour,
      says: "asked for in Scotland, at least",
      source: scotland.id,
      mark: "seen",
    },
    { value: most, says: `the most ${measured}`, source: ren.id, mark: "seen" },
  ],
  radiusM: [{ value: 0.5, says: "about an arm's reach round the mouth", mark: "assumption" }],
  airSpeedMPerMin: [
    { value: 3.6, says: "0.06 m/s, still air: more stays beside the mouth", mark: "assumption" },
    {
      value: baldwin.meanMPerS * 60,
      says: `mean of ${baldwin.workAreas} work areas; ${baldwin.shareBelowMean * 100} of 100 readings lie below it`,
      source: baldwin.id,
      mark: "seen",
    },
  ],
} as const satisfies Readonly<Record<string, readonly TypicalFigure[]>>;
