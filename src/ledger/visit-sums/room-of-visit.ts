import type { SolventInput } from "../../core/safety/solvent/solvent-input.ts";
import type { PartOf } from "../../record/parts.ts";
import { type FactTold, factTold } from "../fact-told.ts";

type Visit = PartOf<"visit">;
type Told = FactTold<keyof SolventInput>;

/** What is to be done where a visit has no room. */
export const roomMissing = "the room was not set; take the clinic's, or write its volume and air changes here";

/** The room as the visit keeps it; undefined where it has none. */
export function roomOf({ id, body: { clinic } }: Visit): Told[] | undefined {
  if (clinic?.room === undefined) return undefined;
  const { volumeM3, airChangesPerHour, temperatureC, nearField } = clinic.room;
  const at = (input: string, field: string) => ({ input, record: `${id}/clinic/${field}` });
  const { evaporationPerMin } = clinic;
  return [
    {
      field: "room",
      value: { volumeM3, airChangesPerHour },
      paths: [at("room.volumeM3", "room/volumeM3"), at("room.airChangesPerHour", "room/airChangesPerHour")],
    },
    ...factTold("temperatureC" as const, temperatureC, `${id}/clinic/room/temperatureC`),
    ...factTold("nearField" as const, nearField, `${id}/clinic/room/nearField`),
    ...(evaporationPerMin === undefined
      ? []
      : [
          {
            field: "evaporation" as const,
            value: { kind: "firstOrder", ratePerMin: evaporationPerMin },
            paths: [at("evaporation.ratePerMin", "evaporationPerMin")],
          },
        ]),
  ];
}

/** The clinic's further limits of one solvent. */
export function limitsOfRoom({ id, body: { clinic } }: Visit, solvent: string): Told[] {
  const own = (clinic?.exposureLimits ?? []).flatMap(({ solvent: of, ...limit }, index) =>
    of.toLowerCase() === solvent.toLowerCase() ? [{ limit, index }] : [],
  );
  if (own.length === 0) return [];
  const paths = own.map(({ index }, at) => ({
    input: `furtherLimits[${at}]`,
    record: `${id}/clinic/exposureLimits/${index}`,
  }));
  return [{ field: "furtherLimits", value: own.map(({ limit }) => limit), paths }];
}

/** What else was breathed on the day; what lasted no time adds nothing. */
export function otherCasesOf({ id, body: { otherSolventCases = [] } }: Visit): Told[] {
  const breathed = otherSolventCases.flatMap((one, index) => (one.minutes > 0 ? [{ one, index }] : []));
  if (breathed.length === 0) return [];
  const paths = breathed.map(({ index }, at) => ({
    input: `otherCases[${at}]`,
    record: `${id}/otherSolventCases/${index}`,
  }));
  return [{ field: "otherCases", value: breathed.map(({ one }) => one), paths }];
}
