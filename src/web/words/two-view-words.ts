import type { BodyOf } from "../../record/parts.ts";

type Receptor = BodyOf<"film">["receptor"];

/** How a receptor can have been held, each with what it means for the sum. */
export const receptorMeaning: Readonly<Record<Receptor, { readonly name: string; readonly means: string }>> = {
  turnsWithBeam: {
    name: "turned with the beam",
    means: "A holder ties receptor and tube together: the receptor stayed square to the beam.",
  },
  fixed: {
    name: "left in its place",
    means: "The tube alone was moved: depth shows larger on the film, by the tangent of the angle.",
  },
  unknown: {
    name: "not known",
    means: "Both ways are computed: the intervals hold both, and a side stands only where both agree.",
  },
};

/** How a side is called in this tooth: inside the upper row it is palatal. */
export const innerSide = (tooth: string): "lingual" | "palatal" => (/^[1256]/.test(tooth) ? "palatal" : "lingual");

/** Words that speak of lingual as they are said of this tooth. */
export const sideOfTooth = (words: string, tooth: string): string => words.replaceAll("lingual", innerSide(tooth));
