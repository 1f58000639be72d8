import { causeFacts } from "./cause-facts.ts";
import { doubtFacts } from "./doubt-facts.ts";
import type { Examined } from "./examined.ts";
import { anyOf, type Fact, fact, joined } from "./fact.ts";
import { filmFacts } from "./film-facts.ts";
import { illnessFacts } from "./illness-facts.ts";
import { originFacts } from "./origin-facts.ts";
import { painFacts } from "./pain-facts.ts";
import { replyFacts } from "./reply-facts.ts";
import { tissueFacts } from "./tissue-facts.ts";
import { treatmentFacts } from "./treatment-facts.ts";

/** Every thing that the rows of the table look at, by name. */
export type Facts = Readonly<Record<string, Fact>>;

/** The facts of an examination, before either axis is decided. @source docs/methods/diagnosis, C2 to C8 */
export function factsOf(examined: Examined): Facts {
  const replies = replyFacts(examined);
  const tissue = tissueFacts(examined);
  const film = filmFacts(examined);
  const illness = illnessFacts(examined);
  const treatment = treatmentFacts(examined);
  const signs = [film.lucency, ownTract(tissue), illness.swelling, tissue.painOnPressure];
  const sign = joined(anyOf(signs.map(({ is }) => is)), signs);
  const enough = [replies.twoTests, sign];
  const untreated = [treatment.filled, treatment.opened].every(({ is }) => is !== "yes");
  return {
    ...{ ...treatment, ...replies, ...tissue, ...film, ...illness },
    ...painFacts(examined, tissue.tender),
    ...doubtFacts(examined, film),
    ...causeFacts(examined),
    ...originFacts(examined),
    sign,
    enough: joined(anyOf(enough.map(({ is }) => is)), enough),
    responding: untreated ? replies.reply : fact("no", "the canals were treated before", "existing"),
  };
}

/** A tract that leads to another tooth is no sign of this one. */
const ownTract = ({ tract, tracedElsewhere }: { readonly tract: Fact; readonly tracedElsewhere: Fact }): Fact =>
  tracedElsewhere.is === "yes" ? { ...tract, is: "no" } : tract;

/** A pulpal answer as the apical rows look at it. */
interface PulpalAnswer {
  readonly term: string;
  readonly status: string;
}

const dead = ["Pulp necrosis", "Previously treated", "Previously initiated therapy"];

/** The facts with the pulpal answer among them, for the apical axis. @source docs/methods/diagnosis, C6 */
export function withPulp(facts: Facts, { term, status }: PulpalAnswer): Facts {
  const at = "pulpal";
  const vital = facts.responding?.is === "yes";
  const nonVital = dead.includes(term) ? "yes" : vital ? "no" : "unknown";
  const words = nonVital === "no" ? "the pulp replies" : term.toLowerCase();
  return {
    ...facts,
    nonVital: fact(nonVital, words, at),
    nonVitalSure: fact(nonVital === "yes" && status !== "determined" ? "unknown" : nonVital, words, at),
    pulpNormal: fact(term === "Normal pulp" ? "yes" : "no", words, at),
  };
}
