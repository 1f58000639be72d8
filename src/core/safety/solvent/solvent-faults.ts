import { type Fault, Refusal } from "../../refusal.ts";
import { extrudedMg } from "./extruded.ts";
import { ends } from "./rates-asked.ts";
import { roomAir } from "./room-modes.ts";
import { solventFacts, vapourPressureRangeC } from "./solvent-facts.ts";
import type { OwnLimit, SolventInput } from "./solvent-input.ts";

/**
 * Refuses what can't be: every fault with its path.
 * @throws Refusal `input.impossible`
 * @source docs/methods/solvent.md, What it refuses
 */
export function checkSolvent(input: SolventInput): void {
  const faults = [
    ...solventFaults(input),
    ...evaporationFaults(input),
    ...nearFieldFaults(input),
    ...limitFaults(input.furtherLimits, "furtherLimits"),
    ...dayFaults(input),
    ...extrusionFaults(input),
  ];
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot compute the vapour: what is told can't be", {}, faults);
}

function solventFaults({ solvent, temperatureC = 25, pressureKPa = 101.325 }: SolventInput): Fault[] {
  const { low, high } = vapourPressureRangeC;
  if (typeof solvent === "string") {
    const known = temperatureC >= low && temperatureC <= high;
    const says = `${temperatureC} is outside ${low}..${high}, for which the vapour pressure of ${solvent} is known; elsewhere give the solvent by its own numbers`;
    return known ? [] : [{ path: "temperatureC", says }];
  }
  const { vapourPressureKPa } = solvent;
  const boils: Fault[] =
    vapourPressureKPa < pressureKPa
      ? []
      : [
          {
            path: "solvent.vapourPressureKPa",
            says: `${vapourPressureKPa} is not below the air's ${pressureKPa}: it would boil`,
          },
        ];
  return [...boils, ...limitFaults(solvent.limits, "solvent.limits")];
}

function limitFaults(limits: readonly OwnLimit[] = [], path: string): Fault[] {
  return limits.flatMap(({ ppm, mgM3 }, index) => {
    if ((ppm === undefined) !== (mgM3 === undefined)) return [];
    const says = ppm === undefined ? "is missing: give ppm or mgM3" : "stands beside mgM3: give one of both";
    return [{ path: `${path}[${index}].ppm`, says }];
  });
}

function evaporationFaults({ evaporation }: SolventInput): Fault[] {
  if (evaporation === undefined) return [];
  const { kind, ratePerMin, overMin } = evaporation;
  const belongs = (name: "ratePerMin" | "overMin", to: string): Fault[] =>
    evaporation[name] === undefined ? [] : [{ path: `evaporation.${name}`, says: `belongs to ${to}, not to ${kind}` }];
  const order = (["ratePerMin", "overMin"] as const).flatMap((name) => {
    const { low, high } = ends(evaporation[name] ?? 1);
    return low <= high ? [] : [{ path: `evaporation.${name}.low`, says: `${low} is above high, ${high}` }];
  });
  if (kind === "instant")
    return [...belongs("ratePerMin", "firstOrder or constant"), ...belongs("overMin", "constant"), ...order];
  if (kind === "firstOrder") return [...belongs("overMin", "constant"), ...order];
  const twice = ratePerMin !== undefined && overMin !== undefined;
  return [
    ...(twice ? [{ path: "evaporation.overMin", says: "stands beside ratePerMin: give one of both" }] : []),
    ...order,
  ];
}

function nearFieldFaults({ room, nearField }: SolventInput): Fault[] {
  if (nearField === undefined) return [];
  const { near, farM3 } = roomAir(room, nearField);
  if (farM3 > 0) return [];
  const says = `${nearField.radiusM} makes a half sphere of ${near?.volumeM3.toFixed(2)} m3, which is not less than the room's ${room.volumeM3}`;
  return [{ path: "nearField.radiusM", says }];
}

function dayFaults({ otherCases = [] }: SolventInput): Fault[] {
  const minutes = otherCases.reduce((sum, one) => sum + one.minutes, 0);
  return minutes <= 1_440 ? [] : [{ path: "otherCases", says: `${minutes} min in all are longer than a day` }];
}

function extrusionFaults(input: SolventInput): Fault[] {
  const { extrusion, doses } = input;
  if (extrusion === undefined) return [];
  const { volumeMl, massMg } = extrusion;
  if (volumeMl === undefined && massMg === undefined)
    return [{ path: "extrusion.massMg", says: "is missing: give massMg or volumeMl" }];
  if (volumeMl !== undefined && massMg !== undefined)
    return [{ path: "extrusion.massMg", says: "stands beside volumeMl: give one of both" }];
  const facts = solventFacts(input);
  const dispensed = doses.reduce((sum, dose) => sum + dose.volumeMl, 0) * facts.densityGMl * 1000;
  const passed = extrudedMg(extrusion, facts);
  if (doses.length === 0 || passed <= dispensed * (1 + 1e-9)) return [];
  const says = `${passed.toPrecision(4)} mg are more than the ${dispensed.toPrecision(4)} mg that were dispensed`;
  return [{ path: volumeMl === undefined ? "extrusion.massMg" : "extrusion.volumeMl", says }];
}
