import { agentLimit } from "./agent-limit.ts";
import type { AnaestheticInput } from "./anaesthetic-input.ts";
import { unitOf } from "./dose-amounts.ts";
import { type LimitSet, publishedSets } from "./limit-sets.ts";
import { vasoconstrictorLimit } from "./vasoconstrictor-limits.ts";

/** For whom an agent's limit is reckoned. */
interface Person {
  readonly massKg: number;
  /** Whether a maximum without mg/kg is a limit for this person. */
  readonly grown: boolean;
}

/**
 * Where limits of one's own are above every published one: as printed, or in what they come to for this person, as without
 * mg/kg for a light one and without a maximum for a heavy one.
 * @source docs/methods/anaesthetic.md C12
 */
export const aboveEverySet = ({ limits }: LimitSet, { massKg, grown }: Person): string[] =>
  [...limits].flatMap(([agent, own]) => {
    const rows = publishedSets.flatMap((set) => set.limits.get(agent) ?? []);
    if (rows.length === 0)
      return [`No published set that is held here has a limit for ${agent}: the person's own counts alone.`];
    const { micrograms } = agentLimit(own, massKg);
    const allowed = rows
      .filter(({ mgPerKg }) => mgPerKg !== undefined || grown)
      .map((row) => agentLimit(row, massKg).micrograms);
    const most = Math.max(0, ...allowed);
    if (micrograms > most)
      return [
        `The limit that was given for ${agent} comes to ${micrograms / 1_000} mg, above every published one that is held here: they allow ${most / 1_000} mg at most.`,
      ];
    const higher = (own.mgPerKg ?? 0) > Math.max(0, ...rows.map(({ mgPerKg = 0 }) => mgPerKg));
    return higher ? [`The mg/kg that was given for ${agent} is above every published one that is held here.`] : [];
  });

/**
 * Where a vasoconstrictor's limit of one's own is above the one that is held here.
 * @source docs/methods/anaesthetic.md C6, C12
 */
export const aboveHeldLimit = ({ vasoconstrictorLimits = [], cardiacRisk }: AnaestheticInput): string[] =>
  vasoconstrictorLimits.flatMap(({ name, limit }) => {
    const held = vasoconstrictorLimit(name, { cardiacRisk });
    if (held === undefined || limit <= held.limit) return [];
    const risk = cardiacRisk === true && name === "epinephrine" ? " with cardiac risk" : "";
    const unit = unitOf(name);
    return [
      `The limit that was given for ${name}, ${limit} ${unit}, is above the one held here${risk}, ${held.limit} ${unit}.`,
    ];
  });
