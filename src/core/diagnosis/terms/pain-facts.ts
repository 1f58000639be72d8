import review from "../../../../data/orofacial-pain-review-2025/source.json" with { type: "json" };
import { type Examined, sensibilityOf } from "./examined.ts";
import { allOf, answerIs, anyOf, type Fact, fact, joined, type Truth, yesNoFact } from "./fact.ts";

/** Below this no source calls a reply lingering; above the other all do. The sources conflict between them. */
const lingeringBetween = {
  fromSeconds: review.reversibleAtMostSeconds + 1,
  toSeconds: review.irreversibleAboveSeconds,
} as const;

/** A question of the history that is answered with yes, no or not asked. */
type Asked = "spontaneousPain" | "nightPain" | "referredPain" | "painToSweet" | "painToHeat" | "painToCold";
const painWords: Readonly<Record<Asked, string>> = {
  spontaneousPain: "spontaneous pain",
  nightPain: "pain at night",
  referredPain: "referred pain",
  painToSweet: "pain to sweet",
  painToHeat: "pain to heat",
  painToCold: "pain to cold",
};

/** What was told of pain, and how long a thermal reply lasts. @source docs/methods/diagnosis, C5 */
export function painFacts(examined: Examined, tender: Fact) {
  const { history } = examined.input;
  const told = (name: Asked): Fact => yesNoFact(history[name], painWords[name], `history.${name}`);
  const spontaneous = told("spontaneousPain");
  const nightPain = told("nightPain");
  const referred = told("referredPain");
  const heat = told("painToHeat");
  const cold = told("painToCold");
  const sweet = told("painToSweet");
  const { toldLasts, ...lasts } = lastingFacts(examined);
  const heightened = heightenedOf(examined);
  const second = [spontaneous, referred, nightPain, heat, tender];
  return {
    spontaneous,
    nightPain,
    referred,
    painToHeat: heat,
    heatThenCold: heatThenCold(examined, heat),
    ...lasts,
    provoked: oneOrDenied([cold, heat, heightened], [sweet, toldLasts]),
    secondSign: joined(secondSignIs(second, spontaneous), second),
    symptoms: oneOrDenied([spontaneous, cold, heat], [sweet, referred, nightPain]),
  };
}

function heightenedOf({ tooth }: Examined): Fact {
  const done = sensibilityOf(tooth).filter(({ test }) => test !== "electric");
  const over = done.filter((one) => one.heightened);
  const told = over.length > 0 ? over.map(({ says }) => says).join("; ") : "no heightened reply";
  const is = done.length === 0 ? "unknown" : over.length > 0 ? "yes" : "no";
  return fact(is, told, ...over.map(({ at }) => at));
}

function heatThenCold({ tooth, input }: Examined, heat: Fact): Fact {
  const byHeat = anyOf([heat.is, answerIs(tooth.heat.reply, ["heightened"])]);
  const relieved = answerIs(input.history.relievedByCold, ["yes"]);
  const is = allOf([byHeat, relieved]);
  const says = is === "yes" ? "pain to heat that cold relieves" : "no pain to heat that cold relieves";
  return fact(is, says, "history.painToHeat", "history.relievedByCold");
}

/** One is enough; without one it is no only where spontaneous pain was asked for. */
const secondSignIs = (signs: readonly Fact[], spontaneous: Fact): Truth =>
  signs.some(({ is }) => is === "yes") ? "yes" : spontaneous.is === "no" ? "no" : "unknown";

/** One of all is enough; no is said where the main ones were asked and denied. */
function oneOrDenied(main: readonly Fact[], further: readonly Fact[]): Fact {
  const is = [...main, ...further].some((one) => one.is === "yes") ? "yes" : anyOf(main.map((one) => one.is));
  return joined(is, [...main, ...further]);
}

/** The longest lasting thermal pain, tested or told, against the protocol's cut or the span that the sources leave open. */
function lastingFacts({ tooth, input: { history, lingeringFromSeconds: cut } }: Examined) {
  const tested = longest([
    [tooth.cold.lingersSeconds, `tooth ${tooth.tooth}: cold`],
    [tooth.heat.lingersSeconds, `tooth ${tooth.tooth}: heat`],
  ]);
  const told = longest([
    [history.coldLingersSeconds, "history.coldLingersSeconds"],
    [history.heatLingersSeconds, "history.heatLingersSeconds"],
  ]);
  const all = longest([...tested, ...told].map(({ seconds, at }) => [seconds, at]));
  return {
    lingering: lasting(all, (seconds) => lingers(seconds, cut)),
    lingeringBetween: lasting(all, (seconds) => (lingers(seconds, cut) === "unknown" ? "yes" : "no")),
    lingersTested: lasting(tested, (seconds) => lingers(seconds, cut)),
    lingersTold: lasting(told, (seconds) => lingers(seconds, cut)),
    toldLasts: lasting(told, (seconds) => (seconds > 0 ? "yes" : "no")),
  };
}

type Lasting = readonly { readonly seconds: number; readonly at: string }[];

function longest(given: readonly (readonly [number | undefined, string])[]): Lasting {
  const known = given.flatMap(([seconds, at]) => (seconds === undefined ? [] : [{ seconds, at }]));
  return known.sort((a, b) => b.seconds - a.seconds).slice(0, 1);
}

function lingers(seconds: number, cut: number | undefined): Truth {
  if (cut !== undefined) return seconds >= cut ? "yes" : "no";
  if (seconds > lingeringBetween.toSeconds) return "yes";
  return seconds < lingeringBetween.fromSeconds ? "no" : "unknown";
}

function lasting([found]: Lasting, is: (seconds: number) => Truth): Fact {
  if (found === undefined) return fact("unknown", "");
  return fact(is(found.seconds), `thermal pain outlasts the stimulus by ${found.seconds} s`, found.at);
}
