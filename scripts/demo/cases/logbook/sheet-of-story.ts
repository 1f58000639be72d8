import type { BodyOf } from "../../../../src/record/parts.ts";
import { denied, probing, testedTooth } from "../usual-bodies.ts";
import { inSteps } from "./dice.ts";
import type { Story } from "./story.ts";

type Findings = BodyOf<"findings">;
type Tested = Findings["teeth"][number];

/** The findings that a story's diagnosis rests on: the tooth, one control, and the film. */
export function sheetOf(story: Story): Findings {
  const { apical, pulpal, presentedOn, lesionMm, dice, treatment } = story;
  const painful = pulpal === "symptomaticIrreversiblePulpitis";
  const again = pulpal === "previouslyTreated";
  return {
    takenOn: presentedOn,
    history: {
      ...denied,
      spontaneousPain: painful && dice.chance(0.6) ? "yes" : "no",
      painToCold: painful || pulpal === "reversiblePulpitis" ? "yes" : "no",
      painOnBiting: apical.startsWith("symptomatic") || apical === "acuteApicalAbscess" ? "yes" : "no",
      recentOnset: painful || apical === "acuteApicalAbscess" ? "yes" : "no",
    },
    teeth: [ownTooth(story), { ...controlOf(story) }],
    seen: {
      swelling: apical === "acuteApicalAbscess" ? "intraoral" : "none",
      sinusTract: apical === "chronicApicalAbscess" ? "present" : "none",
      caries: again
        ? "none"
        : treatment === "apicalBarrier"
          ? "none"
          : dice.pick([
              ["deep", 6],
              ["shallow", 1],
              ["exposed", 2],
            ]),
      crack: "none",
      restoration: again
        ? dice.pick([
            ["crown", 6],
            ["composite", 4],
          ])
        : dice.pick([
            ["composite", 5],
            ["none", 4],
            ["amalgam", 2],
          ]),
      fever: "no",
    },
    onFilm: {
      ligament: lesionMm !== undefined || apical === "symptomaticApicalPeriodontitis" ? "widened" : "normal",
      lamina: lesionMm === undefined ? "intact" : "lost",
      lucency: lesionMm === undefined ? "none" : "apical",
      ...(lesionMm === undefined ? {} : { lucencyMm: lesionMm }),
      sclerosis: "no",
      resorption: "none",
      apex: treatment === "apicalBarrier" ? "open" : "closed",
      calcified: story.calcified ? "yes" : "no",
      earlierFilling: again ? "present" : "none",
      ...(again ? { earlierFillingEndMm: inSteps(dice.normal(2.1, 1.4, [-1, 7]), 0.5) } : {}),
    },
    note: "",
  };
}

function ownTooth({ tooth, pulpal, apical, dice }: Story): Tested {
  const lingers = pulpal === "symptomaticIrreversiblePulpitis";
  const dead = pulpal === "pulpNecrosis" || pulpal === "previouslyTreated" || pulpal === "previouslyInitiatedTherapy";
  const sore = apical.startsWith("symptomatic") || apical === "acuteApicalAbscess";
  return testedTooth({
    tooth,
    role: "tooth",
    cold: dead
      ? { reply: "none" }
      : lingers
        ? { reply: "heightened", lingersSeconds: Math.round(dice.between(12, 70)) }
        : { reply: "heightened", lingersSeconds: Math.round(dice.between(1, 4)) },
    percussion: sore ? (dice.chance(0.7) ? "painful" : "slight") : "none",
    palpation: apical === "acuteApicalAbscess" ? "painful" : apical === "chronicApicalAbscess" ? "slight" : "none",
    bite: sore ? "slight" : "none",
    mobility: apical === "acuteApicalAbscess" ? 1 : 0,
    probingMm: probing([3, 2, 3, 3, 2, 3]),
  });
}

/** The same tooth of the other side, which replies as a healthy one. */
function controlOf({ tooth, dice }: Story): Tested {
  const other: Readonly<Record<string, string>> = { "1": "2", "2": "1", "3": "4", "4": "3" };
  return testedTooth({
    tooth: `${other[tooth[0] ?? ""] ?? "1"}${tooth[1] ?? "6"}`,
    role: "control",
    cold: { reply: "normal", lingersSeconds: Math.round(dice.between(1, 3)) },
    probingMm: probing([2, 2, 3, 2, 2, 3]),
  });
}
