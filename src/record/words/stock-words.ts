import type { CabinetItemOf } from "../cabinet/cabinet-item.ts";
import type { templateStep } from "../parts/visit-step.ts";
import type { Words } from "./case-words.ts";
import { medicamentWords, solventWords } from "./visit-words.ts";

/** What a material of the cabinet holds. */
export type StockHolds = CabinetItemOf<"stock">["body"]["holds"];
type TemplateStep = (typeof templateStep)["_output"];

/** Kinds of materials, in words. */
export const stockKindWords: Words<StockHolds["kind"]> = {
  anaesthetic: "local anaesthetic",
  irrigant: "irrigant",
  solvent: "solvent",
  medicament: "medicament",
  temporary: "temporary filling",
  filling: "what stays in the tooth",
};
/** What a material that stays in the tooth serves as, in words. */
export const fillingWords: Words<Extract<StockHolds, { kind: "filling" }>["as"]> = {
  core: "core of the root filling",
  sealer: "sealer",
  barrier: "barrier",
  buildUp: "build-up",
};
/** What a step of a visit is about, in words. */
export const stepAboutWords: Words<NonNullable<TemplateStep["about"]>> = {
  history: "medical history",
  timeOut: "time out",
  anaesthetic: "anaesthetic",
  isolation: "isolation",
  access: "access",
  canals: "canals",
  workingLength: "working length",
  instruments: "instruments",
  irrigation: "irrigation",
  film: "film",
  solvent: "solvent",
  medicament: "medicament",
  coneFit: "fit of the cone",
  filling: "filling",
  temporary: "temporary filling",
  lots: "lots and expiry",
  countIn: "count of instruments",
  told: "what is told",
  next: "next appointment",
  other: "other",
};

/** A material by its kind and strength, as `lidocaine 2 %, epinephrine 1:100000`; what is not told is left out. */
export function stockInWords(holds: StockHolds): string {
  switch (holds.kind) {
    case "anaesthetic":
      return `${holds.agent} ${holds.percent} %, ${vasoconstrictorInWords(holds.vasoconstrictor)}`;
    case "irrigant":
      return [nameOf(holds.solution, holds.named), ...(holds.percent === undefined ? [] : [`${holds.percent} %`])].join(
        " ",
      );
    case "solvent":
      return nameOf(solventWords[holds.solvent], holds.own?.name);
    case "medicament":
      return nameOf(medicamentWords[holds.medicament], holds.detail);
    case "temporary":
      return holds.material;
    case "filling":
      return `${holds.material}, ${fillingWords[holds.as]}`;
  }
}

const nameOf = (name: string, own: string | undefined): string => (name === "other" ? (own ?? name) : name);

type Vasoconstrictor = Extract<StockHolds, { kind: "anaesthetic" }>["vasoconstrictor"];

function vasoconstrictorInWords(held: Vasoconstrictor): string {
  if (held === undefined) return "plain";
  if (held.ratio !== undefined) return `${held.name} 1:${held.ratio}`;
  return held.iuPerMl === undefined ? held.name : `${held.name} ${held.iuPerMl} IU/ml`;
}
