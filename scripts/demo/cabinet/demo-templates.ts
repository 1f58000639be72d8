import type { CabinetItemOf } from "../../../src/record/cabinet/cabinet-item.ts";

type Template = CabinetItemOf<"template">["body"];
type Step = Template["steps"][number];

const before: readonly Step[] = [
  { says: "Medical history asked again", about: "history" },
  { says: "Tooth and side named aloud, film seen the right way round", about: "timeOut" },
  { says: "Local anaesthetic, milligrams against the limit", about: "anaesthetic" },
  { says: "Rubber dam on, tight all round", about: "isolation" },
];
const opened: Step = { says: "Access opened, floor looked at", about: "access", holdPoint: "access" };
const measured: Step = { says: "Lengths by locator and film", about: "workingLength", holdPoint: "workingLength" };
const cleaned: readonly Step[] = [
  { says: "Canals shaped, each instrument noted with its canal", about: "instruments" },
  { says: "Rinsed, with needle, depth and minutes", about: "irrigation" },
  { says: "Dressed, day of its change set", about: "medicament" },
  { says: "Closed, thickness measured", about: "temporary" },
];
const after: readonly Step[] = [
  { says: "Lots of what stays in the tooth", about: "lots" },
  { says: "Instruments counted in", about: "countIn" },
  { says: "Told what to expect and whom to call", about: "told" },
  { says: "Next day agreed", about: "next" },
];

const demo = true as const;
const usual = ["demo-stock-articaine", "demo-stock-hypochlorite", "demo-stock-saline", "demo-stock-edta"];
const closing = ["demo-stock-dressing", "demo-stock-temporary"];

/** The two kinds of visit that the demo's clinic has written down, by their ids. */
export const demoTemplates: Readonly<Record<"demo-template-first" | "demo-template-retreatment", Template>> = {
  "demo-template-first": {
    name: "First visit",
    aim: "Open, find and measure every canal, shape what can be, dress.",
    steps: [...before, opened, { says: "Every canal looked for", about: "canals" }, measured, ...cleaned, ...after],
    stock: [...usual, "demo-stock-lidocaine", ...closing],
    demo,
  },
  "demo-template-retreatment": {
    name: "Retreatment visit",
    aim: "Take out the old filling, find what was missed, measure, shape, dress.",
    steps: [
      ...before,
      opened,
      { says: "Old filling out, each dose of solvent with its minute", about: "solvent" },
      { says: "Missed canals looked for under the microscope", about: "canals" },
      measured,
      ...cleaned,
      ...after,
    ],
    stock: [...usual, "demo-stock-solvent", ...closing],
    demo,
  },
};
