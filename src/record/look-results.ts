import { lookFacts } from "../core/tooth/missed-canal/look.ts";
import type { BodyOf } from "./parts.ts";

type Look = BodyOf<"search">["looks"][number];

/**
 * What a kind of look can come to: found first, then not found.
 * Takes the kind. Gives yes and no for a sign, seen and notSeen for a look at a place.
 */
export const lookResultsOf = (kind: Look["kind"]): readonly [Look["result"], Look["result"]] =>
  lookFacts[kind].sign ? ["yes", "no"] : ["seen", "notSeen"];
