import type { BodyOf } from "../../record/parts.ts";
import { flareUpWords, magnificationWords, rubberDamWords, timeOutWords } from "../../record/words/visit-words.ts";
import { type Block, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";

type Visit = BodyOf<"visit">;

/** What was checked before the work, in one line. */
export function beforeWork(visit: Visit): Block[] {
  const { isolation, magnification } = visit;
  const why = isolation.whyNot === undefined || isolation.whyNot === "" ? "" : ` (${isolation.whyNot})`;
  const checked = [
    visit.timeOut === "notDone" ? "no time-out" : timeOutWords[visit.timeOut],
    visit.historyConfirmed ? "medical history confirmed" : "",
    isolation.rubberDam === "notRecorded" ? "" : `${rubberDamWords[isolation.rubberDam]}${why}`,
    magnification === "notRecorded" || magnification === "none" ? "" : magnificationWords[magnification],
    vitalWords(visit.vitalSigns),
  ].filter((piece) => piece !== "");
  return [{ kind: "text", heading: "Before the work", lines: [says(sentence(checked.join("; ")))] }];
}

function vitalWords(signs: Visit["vitalSigns"]): string {
  if (signs === undefined) return "";
  const { systolicMmHg, diastolicMmHg, pulsePerMin, oxygenSaturation } = signs;
  return [
    systolicMmHg === undefined ? "" : `blood pressure ${systolicMmHg}/${diastolicMmHg ?? "–"} mmHg`,
    pulsePerMin === undefined ? "" : `pulse ${pulsePerMin} a minute`,
    oxygenSaturation === undefined ? "" : `saturation ${oxygenSaturation}`,
  ]
    .filter((piece) => piece !== "")
    .join(", ");
}

/** How the patient fared after the visit. */
export function afterwards({ painBefore, painAfter24h, painAfter7d, flareUp }: Visit): Block[] {
  const pains = [
    ["before", painBefore],
    ["after a day", painAfter24h],
    ["after a week", painAfter7d],
  ].filter(([, pain]) => pain !== undefined);
  const lines = [
    ...(pains.length === 0 ? [] : [`Pain, 0 to 10: ${pains.map(([when, pain]) => `${when} ${pain}`).join(", ")}`]),
    ...(flareUp === "none" || flareUp === "notRecorded" ? [] : [sentence(flareUpWords[flareUp])]),
  ];
  return lines.length === 0 ? [] : [{ kind: "text", heading: "Afterwards", lines: lines.map(says) }];
}

/** What stands beside the page: the instrument set and the lots. */
export function visitNotes({ instrumentSet, lots }: Visit): string[] {
  const counted = (count: number | undefined, way: string) => (count === undefined ? [] : [`counted ${way} ${count}`]);
  const set =
    instrumentSet === undefined
      ? []
      : [
          [
            `Instrument set: ${instrumentSet.set}`,
            ...(instrumentSet.steriliserCycle === "" ? [] : [instrumentSet.steriliserCycle]),
            ...counted(instrumentSet.countedOut, "out"),
            ...counted(instrumentSet.countedIn, "in"),
          ].join(", "),
        ];
  const named = lots.map(({ material, lot }) => `${material} ${lot}`).join("; ");
  return [...set, ...(named === "" ? [] : [`Lots: ${named}`])];
}
