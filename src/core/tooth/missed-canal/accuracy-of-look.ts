import keles from "../../../../data/keles-keskin-2017/source.json" with { type: "json" };
import leonLopez from "../../../../data/leon-lopez-2025/source.json" with { type: "json" };
import type { Feature } from "./feature.ts";
import type { LookKind } from "./look.ts";
import type { Evidence } from "./missed-canal-input.ts";
import { publishedAccuracy } from "./published.ts";

/** How well a look finds a feature, as far as it is known, and where that comes from. */
export interface Accuracy {
  readonly sensitivity: number | undefined;
  readonly specificity: number | undefined;
  readonly from: string;
  /** Ids of the published sources. */
  readonly sources: readonly string[];
}

/**
 * How well a look finds a feature: the person's own figures where given, else the published ones, each by itself.
 * Takes the look as it was made, the tooth's two-digit number and the feature.
 * @source docs/methods/missed-canal, C5
 */
export function accuracyOfLook(look: Evidence, tooth: string, feature: Feature): Accuracy {
  const published = publishedFor(look, tooth, feature);
  const own = look.sensitivity !== undefined || look.specificity !== undefined;
  const whole = look.sensitivity !== undefined && look.specificity !== undefined;
  const from = [
    ...(own ? [ownText(look)] : []),
    ...(whole || published.from === "" ? [] : [own ? `the rest: ${published.from}` : published.from]),
  ];
  return {
    sensitivity: look.sensitivity ?? published.sensitivity,
    specificity: look.specificity ?? published.specificity,
    from: from.join("; "),
    sources: whole ? [] : published.sources,
  };
}

/** What is published of a kind of look, without a depth. */
export function publishedLook(kind: LookKind, tooth: string, feature: Feature): Accuracy {
  const found = publishedAccuracy.find(
    (one) => one.kind === kind && one.features.includes(feature) && (one.teeth?.includes(tooth) ?? true),
  );
  if (found === undefined) return { sensitivity: undefined, specificity: undefined, from: "", sources: [] };
  const { sensitivity, specificity, says, source } = found;
  return { sensitivity, specificity, from: `${says} (${source})`, sources: [source] };
}

/** Why a look without both figures is not counted, and what to give. */
export function whyNotCounted(look: Evidence, path: string, { sensitivity, specificity }: Accuracy): string {
  const missing = [
    ...(sensitivity === undefined ? ["sensitivity"] : []),
    ...(specificity === undefined ? ["specificity"] : []),
  ];
  const give = missing.map((one) => `${path}.${one}`).join(" and ");
  const { withMissedCanal, without } = leonLopez.lesionPercent;
  const lesion =
    look.kind === "lesionOnOneRoot"
      ? `; published is another sign, a lesion of any root: ${withMissedCanal} % of root-filled teeth with a missed canal, ${without} % without (${leonLopez.id})`
      : "";
  return `no ${missing.join(" and ")} of ${look.kind} is published for this; give ${give}, 0 to 1${lesion}`;
}

/** Orifices of a middle mesial canal that lie no deeper than a trough goes: none finds more. */
function reachedBy(depthMm: number): number | undefined {
  const reached = keles.reachedByDepth.filter((one) => one.depthMm <= depthMm).at(-1);
  return reached === undefined ? undefined : reached.n / reached.N;
}

function publishedFor({ kind, depthMm }: Evidence, tooth: string, feature: Feature): Accuracy {
  if (kind !== "troughing" || feature !== "middleMesial" || depthMm === undefined)
    return publishedLook(kind, tooth, feature);
  const from = `orifices within ${depthMm} mm, an upper bound (${keles.id})`;
  return { sensitivity: reachedBy(depthMm), specificity: undefined, from, sources: [keles.id] };
}

const ownText = ({ from = "" }: Evidence): string => (from === "" ? "own figures" : `own figures: ${from}`);
