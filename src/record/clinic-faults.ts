import type { Fault } from "../core/refusal.ts";
import type { ClinicRules } from "./clinic-rules.ts";

/**
 * What in a clinic's rules can't be although each figure fits its form. Takes the rules. Gives a fault for each, its path inside them.
 */
export const clinicFaults = (rules: ClinicRules): Fault[] => [
  ...roomFaults(rules),
  ...evaporationFaults(rules),
  ...exposureFaults(rules),
  ...doseFaults(rules),
  ...repeated(
    "vasoconstrictorLimits",
    rules.vasoconstrictorLimits?.map(({ name }) => name),
  ),
  ...protocolFaults(rules),
];

/** A half sphere round the mouth that holds more than the room is no part of it. */
function roomFaults({ room }: ClinicRules): Fault[] {
  if (room?.nearField === undefined) return [];
  const halfSphereM3 = (2 / 3) * Math.PI * room.nearField.radiusM ** 3;
  if (halfSphereM3 < room.volumeM3) return [];
  const says = `makes ${halfSphereM3.toFixed(1)} m3 near the mouth, which is not less than the room's ${room.volumeM3}`;
  return [{ path: "room.nearField.radiusM", says }];
}

function evaporationFaults({ evaporationPerMin: range }: ClinicRules): Fault[] {
  if (range === undefined || range.low <= range.high) return [];
  return [{ path: "evaporationPerMin.low", says: `${range.low} is above the upper end, ${range.high}` }];
}

function exposureFaults({ exposureLimits = [] }: ClinicRules): Fault[] {
  return exposureLimits.flatMap(({ ppm, mgM3 }, index) => {
    if ((ppm === undefined) !== (mgM3 === undefined)) return [];
    const says = ppm === undefined ? "is missing: give ppm or mg/m3" : "stands beside mg/m3: give one of both";
    return [{ path: `exposureLimits[${index}].ppm`, says }];
  });
}

function doseFaults({ doseLimits, ownDoseLimits = [] }: ClinicRules): Fault[] {
  const none = doseLimits === "own" && ownDoseLimits.length === 0;
  return [
    ...(none ? [{ path: "doseLimits", says: "limits of your own are chosen and none is given: add a row" }] : []),
    ...repeated(
      "ownDoseLimits",
      ownDoseLimits.map(({ agent }) => agent),
      "agent",
    ),
    ...ownDoseLimits.flatMap(({ mgPerKg, maxMg }, index) =>
      mgPerKg === undefined && maxMg === undefined
        ? [{ path: `ownDoseLimits[${index}].mgPerKg`, says: "is missing: give mg/kg, a maximum, or both" }]
        : [],
    ),
  ];
}

/** Of two limits of one thing nobody could tell which counts. */
const repeated = (rows: string, names: readonly string[] = [], field = "name"): Fault[] =>
  names.flatMap((name, index) =>
    names.indexOf(name) < index ? [{ path: `${rows}[${index}].${field}`, says: `${name} has a limit already` }] : [],
  );

function protocolFaults({ irrigation }: ClinicRules): Fault[] {
  return (irrigation?.protocol ?? []).flatMap(({ minutesAtLeast, minutesAtMost }, index) =>
    minutesAtLeast === undefined || minutesAtMost === undefined || minutesAtLeast <= minutesAtMost
      ? []
      : [
          {
            path: `irrigation.protocol[${index}].minutesAtMost`,
            says: `${minutesAtMost} is below the ${minutesAtLeast} min that are wanted at least`,
          },
        ],
  );
}
