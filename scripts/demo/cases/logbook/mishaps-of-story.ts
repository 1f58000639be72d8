import type { BodyOf } from "../../../../src/record/parts.ts";
import { inSteps } from "./dice.ts";
import type { CanalStory, Story } from "./story.ts";

type Mishap = BodyOf<"mishap">;

/** What went otherwise than meant, canal by canal; all of it at the first visit but what happens in filling. */
export function mishapsOf(story: Story): Mishap[] {
  return story.canals.flatMap((canal) => (canal.mishap === undefined ? [] : [mishapOf(story, canal, canal.mishap)]));
}

function mishapOf(story: Story, canal: CanalStory, what: Mishap["what"]): Mishap {
  const { dice, visitsOn, presentedOn, curved } = story;
  const inFilling = what === "fillingExtrusion";
  const visitIndex = inFilling ? visitsOn.length - 1 : 0;
  return {
    on: visitsOn[visitIndex] ?? presentedOn,
    visit: `visit-${visitIndex + 1}`,
    what,
    canal: canal.canal,
    ...(what === "separatedInstrument" ? fragmentOf(story) : {}),
    third:
      what === "perforation"
        ? dice.pick([
            ["coronal", 5],
            ["middle", 3],
            ["apical", 2],
          ])
        : dice.pick([
            ["apical", 6],
            ["middle", 3],
          ]),
    bend: curved
      ? dice.pick([
          ["in", 4],
          ["beyond", 4],
          ["before", 2],
        ])
      : "none",
    handled: handledOf(what, dice),
    toldPatient: "told",
    story: accounts[what] ?? "",
  };
}

function fragmentOf({ dice }: Story): Pick<Mishap, "instrument" | "fragmentMm"> {
  const driven = dice.chance(0.82);
  return {
    instrument: driven
      ? {
          size: dice.pick([
            [20, 3],
            [25, 5],
            [30, 2],
          ]),
          taper: dice.pick([
            [0.04, 4],
            [0.06, 5],
            [0.08, 1],
          ]),
          alloy: dice.pick([
            ["nickelTitanium", 6],
            ["heatTreatedNickelTitanium", 4],
          ]),
          movement: dice.pick([
            ["continuous", 7],
            ["reciprocating", 3],
          ]),
        }
      : {
          size: dice.pick([
            [8, 2],
            [10, 4],
            [15, 2],
          ]),
          taper: 0.02,
          alloy: "stainlessSteel",
          movement: "hand",
        },
    fragmentMm: inSteps(dice.normal(2.8, 1, [0.8, 6]), 0.1),
  };
}

function handledOf(what: Mishap["what"], dice: Story["dice"]): Mishap["handled"] {
  if (what === "separatedInstrument")
    return dice.pick([
      ["bypassed", 4],
      ["left", 3],
      ["removed", 4],
    ]);
  if (what === "perforation") return "repaired";
  if (what === "ledge")
    return dice.pick([
      ["bypassed", 6],
      ["left", 3],
    ]);
  return "left";
}

const accounts: Readonly<Partial<Record<Mishap["what"], string>>> = {
  separatedInstrument: "Parted while shaping; film, patient told.",
  ledge: "Step felt on the outer side of the bend.",
  block: "Dentine mud packed at the end; not regained.",
  fillingExtrusion: "Sealer and a little gutta-percha beyond the end on the final film.",
  perforation: "Bleeding in the search for an orifice; closed with calcium silicate cement in the same visit.",
  irrigantExtrusion: "Sudden pain and swelling on rinsing; cooled, followed daily, gone after nine days.",
};
