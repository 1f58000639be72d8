import { type Fault, Refusal } from "../../refusal.ts";
import { type ToothFacts, teeth } from "../../tooth/teeth.ts";
import type { PlanInput } from "./plan-input.ts";

/**
 * The tooth of a plan, once the facts are found free of contradiction.
 * @throws Refusal `tooth.unknown`, `input.notDeterminable` for a primary tooth, `input.impossible`; every fault at its path
 */
export function checkedTooth(input: PlanInput): ToothFacts {
  const tooth = teeth.find(({ twoDigit }) => twoDigit === input.tooth);
  const faults = [...toothFaults(input.tooth, tooth), ...clashes(input), ...ownFaults(input)];
  if (tooth !== undefined && faults.length === 0) return tooth;
  const says = faults.map(({ path, says: text }) => `${path}: ${text}`).join("; ");
  throw new Refusal(codeOf(tooth), `Cannot weigh the ways: ${says}`, {}, faults);
}

function codeOf(tooth: ToothFacts | undefined) {
  if (tooth === undefined) return "tooth.unknown";
  return tooth.dentition === "primary" ? "input.notDeterminable" : "input.impossible";
}

function toothFaults(text: string, tooth: ToothFacts | undefined): Fault[] {
  if (tooth === undefined)
    return [{ path: "tooth", says: `${JSON.stringify(text)} is no tooth of ISO 3950 (11-18, 21-28, 31-38, 41-48)` }];
  if (tooth.dentition === "permanent") return [];
  return [
    { path: "tooth", says: `the ${tooth.name} is a primary tooth; every row and figure kept is of permanent ones` },
  ];
}

/** Two facts that can't both be. The fault stands at the second. */
function clashes(input: PlanInput): Fault[] {
  const { pulpal, lesion, lesionMm, earlierFilling, perforation, perforationMm, exposure, caries } = input;
  const pairs: [boolean, string, string][] = [
    [lesion === "none" && (lesionMm ?? 0) > 0, "lesionMm", `${lesionMm} mm, but lesion is "none"`],
    [perforation === "none" && (perforationMm ?? 0) > 0, "perforationMm", `${perforationMm} mm, but there is none`],
    [
      pulpal === "previouslyTreated" && earlierFilling === "none",
      "earlierFilling",
      '"none" in a previously treated tooth',
    ],
    [exposure === "none" && caries === "exposed", "caries", '"exposed", but exposure is "none"'],
    [
      earlierFilling === "none" && (input.earlierFillingIs ?? "unknown") !== "unknown",
      "earlierFillingIs",
      "is judged, but there is no earlier filling",
    ],
    [
      earlierFilling === "none" && input.earlierFillingEndMm !== undefined,
      "earlierFillingEndMm",
      "is measured, but there is no earlier filling",
    ],
  ];
  const twice = (input.medical ?? []).flatMap((flag, index, all) =>
    all.indexOf(flag) < index ? [{ path: `medical[${index}]`, says: `${flag} is named twice` }] : [],
  );
  return [...pairs.flatMap(([clash, path, says]) => (clash ? [{ path, says }] : [])), ...twice];
}

function ownFaults({ own = [] }: PlanInput): Fault[] {
  return own.flatMap(({ events, n, percent, lowPercent = 0, highPercent = 100 }, index): Fault[] => {
    const at = `own[${index}]`;
    const counted = events !== undefined && n !== undefined;
    const half = (events === undefined) !== (n === undefined);
    if (half || counted === (percent !== undefined))
      return [{ path: at, says: "needs either events and n, or percent with its range, and not both" }];
    if (counted) return events > n ? [{ path: `${at}.events`, says: `${events} of ${n}: more than there were` }] : [];
    const share = percent ?? 0;
    return [
      ...(lowPercent > share ? [{ path: `${at}.lowPercent`, says: `${lowPercent} is above percent, ${share}` }] : []),
      ...(highPercent < share
        ? [{ path: `${at}.highPercent`, says: `${highPercent} is below percent, ${share}` }]
        : []),
    ];
  });
}
