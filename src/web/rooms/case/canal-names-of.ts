import { canalStatesOn } from "../../../record/canal-states.ts";
import type { Part } from "../../../record/parts.ts";

/** The canals that the case knows by name, root by root. */
export const canalNamesOf = (parts: readonly Part[]): readonly string[] => Object.keys(canalStatesOn(parts));
