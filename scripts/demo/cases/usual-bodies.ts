import type { BodyOf } from "../../../src/record/parts.ts";

type Visit = BodyOf<"visit">;
type Recall = BodyOf<"recall">;
type Findings = BodyOf<"findings">;
type Tested = Findings["teeth"][number];

/** A visit as most are worked: side checked, history confirmed, dam on, microscope, nothing used yet. */
export const visit = (own: Partial<Visit> & Pick<Visit, "on" | "aim">): Visit => ({
  holdPoints: [],
  timeOut: "toothAndSideChecked",
  historyConfirmed: true,
  isolation: { rubberDam: "used" },
  magnification: "microscope",
  anaesthetic: [],
  canals: [],
  irrigation: [],
  instruments: [],
  solvent: [],
  lots: [],
  films: [],
  flareUp: "none",
  told: "",
  note: "",
  ...own,
});

/** A recall of a tooth that stands, works and does not hurt, with a film. */
export const recall = (own: Partial<Recall> & Pick<Recall, "on">): Recall => ({
  retained: "retained",
  functional: "yes",
  symptoms: "none",
  percussion: "none",
  palpation: "none",
  sinusTract: "none",
  swelling: "none",
  mobility: 0,
  restoration: "sound",
  onFilm: "normal",
  imaging: "film",
  readings: [],
  note: "",
  ...own,
});

/** A tooth that replies as a healthy one. */
export const testedTooth = (own: Partial<Tested> & Pick<Tested, "tooth" | "role">): Tested => ({
  cold: { reply: "normal" },
  heat: { reply: "notDone" },
  electric: "notDone",
  percussion: "none",
  palpation: "none",
  bite: "none",
  mobility: 0,
  probingMm: {},
  ...own,
});

/** Six probing depths in the order mesiobuccal, buccal, distobuccal, mesiolingual, lingual, distolingual. */
export const probing = (depths: readonly [number, number, number, number, number, number]): Tested["probingMm"] => ({
  mesiobuccal: depths[0],
  buccal: depths[1],
  distobuccal: depths[2],
  mesiolingual: depths[3],
  lingual: depths[4],
  distolingual: depths[5],
});

/** Everything asked and denied. */
export const denied: Findings["history"] = {
  spontaneousPain: "no",
  painToCold: "no",
  painToHeat: "no",
  relievedByCold: "no",
  painOnBiting: "no",
  trauma: "no",
  recentOnset: "no",
};
