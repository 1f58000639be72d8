import type { BodyOf } from "../record/parts.ts";
import { solventNamed } from "./solvent-named.ts";

type Visit = BodyOf<"visit">;
type Dose = Visit["solvent"][number];

/** What of a visit's solvent and room is taken to be otherwise; what is absent stays as it is recorded. */
export interface Supposed {
  /** Of all doses together, in the shares that they have. */
  readonly volumeMl?: number;
  /** What suction takes of every dose, 0 to 1. */
  readonly recoveredFraction?: number;
  readonly roomM3?: number;
  readonly airChangesPerHour?: number;
  /** Share of what is left that goes into the air in a minute: one rate in place of a range. */
  readonly ratePerMin?: number;
}

/** The doses of one solvent in a visit. */
export const dosesOf = ({ solvent }: Pick<Visit, "solvent">, name: string): readonly Dose[] =>
  solvent.filter((dose) => solventNamed(dose) === name);

/** What a visit records of the things that may be supposed; absent where it says nothing, or where its doses differ. */
export function supposedAsRecorded(visit: Visit, name: string): Supposed {
  const doses = dosesOf(visit, name);
  const [first, ...others] = doses.map(({ recoveredFraction = 0 }) => recoveredFraction);
  const { room, evaporationPerMin: rate } = visit.clinic ?? {};
  return {
    volumeMl: totalOf(doses),
    ...(first === undefined || others.some((one) => one !== first) ? {} : { recoveredFraction: first }),
    ...(room === undefined ? {} : { roomM3: room.volumeM3, airChangesPerHour: room.airChangesPerHour }),
    ...(rate !== undefined && rate.low === rate.high ? { ratePerMin: rate.low } : {}),
  };
}

/** The visit as it would have been; nothing else of it is changed. Without a room it has none to change. */
export function visitSupposed(visit: Visit, name: string, supposed: Supposed): Visit {
  const { room } = visit.clinic ?? {};
  const { roomM3, airChangesPerHour, ratePerMin } = supposed;
  const otherRoom = room && {
    ...room,
    ...(roomM3 === undefined ? {} : { volumeM3: roomM3 }),
    ...(airChangesPerHour === undefined ? {} : { airChangesPerHour }),
  };
  const clinic = {
    ...visit.clinic,
    ...(otherRoom === undefined ? {} : { room: otherRoom }),
    ...(ratePerMin === undefined ? {} : { evaporationPerMin: { low: ratePerMin, high: ratePerMin } }),
  };
  return {
    ...visit,
    ...(Object.keys(clinic).length === 0 ? {} : { clinic }),
    solvent: dosesSupposed(visit, name, supposed),
  };
}

function dosesSupposed(visit: Visit, name: string, { volumeMl, recoveredFraction }: Supposed): Dose[] {
  const own = dosesOf(visit, name);
  const total = totalOf(own);
  // Doses of nothing have no shares: each is given as much as another.
  const shareOf = (dose: Dose): number => (total > 0 ? dose.volumeMl / total : 1 / own.length);
  return visit.solvent.map((dose) =>
    solventNamed(dose) === name
      ? {
          ...dose,
          ...(volumeMl === undefined ? {} : { volumeMl: shareOf(dose) * volumeMl }),
          ...(recoveredFraction === undefined ? {} : { recoveredFraction }),
        }
      : dose,
  );
}

const totalOf = (doses: readonly Dose[]): number => doses.reduce((sum, { volumeMl }) => sum + volumeMl, 0);
