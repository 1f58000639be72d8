import { type Fault, Refusal } from "../../refusal.ts";
import { noToothSays } from "../../tooth/known-tooth.ts";
import { teeth as known } from "../../tooth/teeth.ts";
import type { DiagnosisInput } from "./diagnosis-input.ts";
import type { Examined } from "./examined.ts";

/**
 * The sheet parted into the tooth and its controls, controls by their numbers.
 * @throws Refusal `tooth.unknown`, `input.impossible`, each with every fault and its path
 * @source docs/methods/diagnosis, "What it refuses"
 */
export function examinedOf(input: DiagnosisInput): Examined {
  refuse("tooth.unknown", "Cannot diagnose: a tooth is not known", unknownTeeth(input));
  const faults = [...roleFaults(input), ...lingeringFaults(input), ...existingFaults(input), ...dayFaults(input)];
  refuse("input.impossible", "Cannot diagnose: the findings contradict themselves", faults);
  const tooth = input.teeth.find(({ role }) => role === "tooth");
  if (tooth === undefined) throw new Error("a sheet without its tooth was let through");
  const controls = input.teeth
    .filter(({ role }) => role === "control")
    .sort((a, b) => Number(a.tooth) - Number(b.tooth));
  return { input, tooth, controls };
}

function refuse(code: "tooth.unknown" | "input.impossible", message: string, faults: readonly Fault[]): void {
  if (faults.length > 0) throw new Refusal(code, message, {}, faults);
}

function unknownTeeth({ teeth, seen }: DiagnosisInput): Fault[] {
  const named = [...teeth.map(({ tooth }, at) => ({ path: `teeth[${at}].tooth`, tooth })), ...tracedTo(seen.tracedTo)];
  return named
    .filter(({ tooth }) => !known.some(({ twoDigit }) => twoDigit === tooth))
    .map(({ path, tooth }) => ({ path, says: noToothSays(tooth) }));
}

const tracedTo = (tooth: string | undefined) => (tooth === undefined ? [] : [{ path: "seen.tracedTo", tooth }]);

function roleFaults({ teeth }: DiagnosisInput): Fault[] {
  const own = teeth.findIndex(({ role }) => role === "tooth");
  if (own < 0) return [{ path: "teeth", says: "none of them has the role tooth; one is needed" }];
  return teeth.flatMap(({ tooth, role }, at): Fault[] => {
    if (role === "tooth")
      return at === own ? [] : [{ path: `teeth[${at}].role`, says: "is a second tooth; one is asked about" }];
    const path = `teeth[${at}].tooth`;
    if (tooth === teeth[own]?.tooth)
      return [{ path, says: `${tooth} is the tooth itself and can't be its own control` }];
    const first = teeth.findIndex((one) => one.role === "control" && one.tooth === tooth);
    return first < at ? [{ path, says: `${tooth} is already a control` }] : [];
  });
}

function lingeringFaults({ teeth }: DiagnosisInput): Fault[] {
  return teeth.flatMap((tested, at) =>
    (["cold", "heat"] as const).flatMap((test): Fault[] => {
      const { reply, lingersSeconds } = tested[test];
      if (lingersSeconds === undefined || (reply !== "none" && reply !== "notDone")) return [];
      const why = reply === "none" ? "a test without a reply" : "a test that was not done";
      return [{ path: `teeth[${at}].${test}.lingersSeconds`, says: `${lingersSeconds} s stand at ${why}` }];
    }),
  );
}

function existingFaults({ existing = [] }: DiagnosisInput): Fault[] {
  return existing.flatMap(({ canal }, at) =>
    existing.findIndex((one) => one.canal === canal) < at
      ? [{ path: `existing[${at}].canal`, says: `${canal} is named twice` }]
      : [],
  );
}

function dayFaults({ takenOn, history: { traumaOn } }: DiagnosisInput): Fault[] {
  if (takenOn === undefined || traumaOn === undefined || traumaOn <= takenOn) return [];
  return [{ path: "history.traumaOn", says: `${traumaOn} lies after the examination of ${takenOn}` }];
}
