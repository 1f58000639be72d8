import { Refusal } from "../refusal.ts";
import { type ToothFacts, teeth } from "./teeth.ts";

/** What is said of a text that is no tooth's two-digit number. */
export const noToothSays = (text: string): string =>
  `${JSON.stringify(text)} is no two-digit number of a tooth (11-48, 51-85)`;

/**
 * The tooth of a two-digit number.
 * Takes the number as it stands at `tooth` in an input, and what can't be done without the tooth, as "describe the canals".
 * @throws Refusal `tooth.unknown`
 * @source International Organization for Standardization, ISO 3950, 2016 (memory)
 */
export function knownTooth(twoDigit: string, toDo: string): ToothFacts {
  const tooth = teeth.find((one) => one.twoDigit === twoDigit);
  if (tooth !== undefined) return tooth;
  const says = noToothSays(twoDigit);
  throw new Refusal("tooth.unknown", `Cannot ${toDo}: ${says}`, { tooth: twoDigit }, [{ path: "tooth", says }]);
}
