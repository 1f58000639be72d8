import type { RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";

/** A fragment longer than this was named as favourable, mm. */
const longMm = 5;
/** Own limits of the classes of curvature, degrees. */
const [slightDeg, moderateDeg] = [10, 25];

/**
 * What is known of a case, by the names that the groups of published series use.
 * @source docs/methods/removal.md C7
 */
export function caseFacts(input: RemovalInput, { third, bend }: RemovalOutput["place"]): ReadonlyMap<string, string> {
  const { fragment, headSeen, toothType: tooth, curvatureDeg } = input;
  const facts: Readonly<Record<string, string | undefined>> = {
    ...{ third, tooth, bend: bend === "none" ? "straight" : bend },
    headSeen: headSeen === "notLooked" ? undefined : headSeen,
    long: whether(fragment.lengthMm, (mm) => mm > longMm),
    curvature: curvatureDeg === undefined ? undefined : curvatureClass(curvatureDeg),
    curvature21to50: whether(curvatureDeg, (degrees) => degrees >= 21 && degrees <= 50),
    upperMolar: tooth === undefined || tooth === "molar" ? undefined : "no",
    instrument: instrumentOf(input),
  };
  return new Map(
    Object.entries(facts).flatMap(([name, value]) => (value === undefined ? [] : [[name, value] as const])),
  );
}

function whether<Value>(value: Value | undefined, holds: (value: Value) => boolean): "yes" | "no" | undefined {
  if (value === undefined) return undefined;
  return holds(value) ? "yes" : "no";
}

function curvatureClass(degrees: number): string {
  if (degrees <= slightDeg) return "slight";
  return degrees <= moderateDeg ? "moderate" : "severe";
}

/** The one series that splits by it holds nickel-titanium alone. */
function instrumentOf({ alloy, movement }: RemovalInput): string | undefined {
  if (alloy === undefined || movement === undefined) return undefined;
  if (!["nickelTitanium", "heatTreatedNickelTitanium"].includes(alloy)) return "other";
  if (movement === "continuous") return "rotary";
  return movement === "hand" ? "hand" : "other";
}
