import type { Interval } from "../../basis.ts";
import type { Fault } from "../../refusal.ts";
import type { DifficultyCanal, DifficultyInput } from "./difficulty-input.ts";

/** Every contradiction of an input, with its path. */
export function difficultyFaults({ canals = [], earlierFilling }: DifficultyInput): Fault[] {
  return [
    ...canals.flatMap(({ name }, index) =>
      canals.findIndex((one) => one.name === name) < index
        ? [{ path: `canals[${index}].name`, says: `${name} stands twice` }]
        : [],
    ),
    ...canals.flatMap(faultsOfCanal),
    ...(earlierFilling === undefined ? [] : faultsOfFilling(earlierFilling)),
  ];
}

function faultsOfCanal(canal: DifficultyCanal, index: number): Fault[] {
  const pairs: [string, number | undefined, Interval | undefined][] = [
    ["deflectionInterval", canal.deflectionDeg, canal.deflectionInterval],
    ["radiusInterval", canal.radiusMm, canal.radiusInterval],
    ["lengthInterval", canal.lengthMm, canal.lengthInterval],
  ];
  return pairs.flatMap(([field, value, interval]) => {
    const path = `canals[${index}].${field}`;
    if (interval === undefined) return [];
    if (value === undefined) return [{ path, says: "stands without the value that it is the interval of" }];
    const holds = interval.low <= value && value <= interval.high;
    return holds ? [] : [{ path, says: `${interval.low} to ${interval.high} does not hold the value ${value}` }];
  });
}

function faultsOfFilling({ present, endMm, density, beyond }: NonNullable<DifficultyInput["earlierFilling"]>): Fault[] {
  const at = (field: string, says: string): Fault => ({ path: `earlierFilling.${field}`, says });
  const none = "stands though there is no earlier filling";
  const absent = [
    ...(endMm === undefined ? [] : [at("endMm", none)]),
    ...(density === undefined ? [] : [at("density", none)]),
    ...(beyond === undefined ? [] : [at("beyond", none)]),
  ];
  if (!present) return absent;
  if (endMm === undefined || beyond === undefined || beyond === endMm < 0) return [];
  return [
    at("beyond", `${beyond} contradicts an end ${Math.abs(endMm)} mm ${endMm < 0 ? "beyond" : "short of"} the apex`),
  ];
}
