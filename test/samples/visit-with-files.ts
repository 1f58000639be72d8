import { visit } from "../../scripts/demo/cases/usual-bodies.ts";
import type { BodyOf } from "../../src/record/parts.ts";

/** A visit on a day with these instruments; invented. */
export const visitWithFiles = (on: string, instruments: BodyOf<"visit">["instruments"]): BodyOf<"visit"> =>
  visit({ on, aim: "Shaping", instruments });
