import estrela from "../../../../data/estrela-2008/source.json" with { type: "json" };
import schneider from "../../../../data/schneider-1971/source.json" with { type: "json" };
import type { Interval } from "../../basis.ts";
import type { Deg, Mm } from "../../units.ts";

/** How one published source calls a measured value. */
export interface SeverityByOneSource {
  /** The folder of data/ that holds the classes. */
  readonly source: string;
  /** The measure that the source judges by. */
  readonly by: "schneiderDeg" | "pruettRadiusMm";
  readonly value: number;
  /** The source's own word, or that the value lies in a gap of its classes or beyond them. */
  readonly class: string;
  /** Every class that the interval of the value reaches, the lowest value's first. */
  readonly within: readonly string[];
}

const gap = "between the published classes";
const beyond = "above the published classes";

/**
 * Schneider's class of an angle: straight to 5, moderate 10 to 20, severe 25 to 70 degrees; the gaps are the source's own.
 * @source Schneider SW, Oral Surg Oral Med Oral Pathol 1971;32:271-275 (memory); docs/methods/curvature.md C15
 */
export function schneiderClass(angle: Deg): string {
  const found = schneider.classesDeg.find(({ from, to }) => angle >= from && angle <= to);
  if (found !== undefined) return found.name;
  return angle > Math.max(...schneider.classesDeg.map(({ to }) => to)) ? beyond : gap;
}

/**
 * Estrela's class of a radius: severe to 4 mm, moderate over 4 to 8 mm, mild above.
 * @source Estrela C et al., Braz Dent J 2008;19:114-118 (memory); docs/methods/curvature.md C15
 */
export function estrelaClass(radius: Mm): string {
  const found = estrela.classesMm.find(({ to }) => to === null || radius <= to);
  return found?.name ?? beyond;
}

/** A measured value with its interval, where it has one. */
export interface Measured<Value extends number> {
  readonly value: Value;
  readonly interval: Interval | undefined;
}

/**
 * The severity of a course by each published source that can judge it; a straight course has no radius to judge.
 * Takes the angle of Schneider and, where there is a bend, its radius.
 */
export function severityOf(angle: Measured<Deg>, radius: Measured<Mm> | undefined): SeverityByOneSource[] {
  const byAngle: SeverityByOneSource = {
    source: schneider.id,
    by: "schneiderDeg",
    value: angle.value,
    class: schneiderClass(angle.value),
    within: within(angle, schneiderClass, 0.25),
  };
  if (radius === undefined) return [byAngle];
  const byRadius: SeverityByOneSource = {
    source: estrela.id,
    by: "pruettRadiusMm",
    value: radius.value,
    class: estrelaClass(radius.value),
    within: within(radius, estrelaClass, 0.1),
  };
  return [byAngle, byRadius];
}

/** What each source judges by, in words. */
const measureInWords: Readonly<Record<SeverityByOneSource["by"], string>> = {
  schneiderDeg: "the angle after Schneider (Schneider 1971)",
  pruettRadiusMm: "the radius of the largest bend (Estrela 2008)",
};

/** The one caution that two sources disagree, with both words; none where they agree or one does not say. */
export function disagreement(judged: readonly SeverityByOneSource[]): string[] {
  const named = judged.filter((one) => one.class !== gap && one.class !== beyond);
  if (new Set(named.map((one) => one.class)).size < 2) return [];
  const words = named.map((one) => `${one.class} by ${measureInWords[one.by]}`).join(", ");
  return [`The published classes disagree: ${words}.`];
}

/** The classes met on the way through an interval, in steps well below the width of any class. */
function within<Value extends number>(
  { value, interval }: Measured<Value>,
  classOf: (value: Value) => string,
  step: number,
): string[] {
  if (interval === undefined) return [classOf(value)];
  const low = Math.max(0, interval.low);
  const high = Math.min(interval.high, 100);
  const steps = Math.ceil(Math.max(0, high - low) / step);
  const seen = Array.from({ length: steps + 1 }, (_, index) => classOf(Math.min(low + index * step, high) as Value));
  return [...new Set([...seen, classOf(interval.high as Value)])];
}
