import type { ToothFacts } from "../../core/tooth/teeth.ts";

const permanent = [
  ...["front tooth next to the middle", "second front tooth from the middle", "corner tooth"],
  ...["first small back tooth", "second small back tooth"],
  ...["first big back tooth", "second big back tooth", "wisdom tooth"],
] as const;
const primary = [
  ...["front milk tooth next to the middle", "second front milk tooth from the middle", "corner milk tooth"],
  ...["first back milk tooth", "second back milk tooth"],
] as const;

/** Which tooth it is, said to somebody who never counted teeth: `It is the first big back tooth in the top row, on your left side.` */
export function toothPlainly({ dentition, twoDigit, arch, side }: ToothFacts): string {
  const names = dentition === "primary" ? primary : permanent;
  const name = names[Number(twoDigit.charAt(1)) - 1] ?? "tooth";
  return `It is the ${name} in the ${arch === "upper" ? "top" : "bottom"} row, on your ${side} side.`;
}
