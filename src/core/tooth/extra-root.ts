import type { CanalRoot } from "./canal-root.ts";
import type { ToothFacts } from "./teeth.ts";

/** A third root of a lower molar by the side that it lies on. */
type ExtraRootName = "radix entomolaris" | "radix paramolaris";

/** What the roots of a tooth say about an extra root. */
export type ExtraRoot =
  | { readonly kind: "none" }
  | { readonly kind: "named"; readonly name: ExtraRootName; readonly root: string }
  | { readonly kind: "sideUnknown"; readonly root: string };

type Placed = { readonly root: CanalRoot; readonly end: string; readonly side: CanalRoot["side"] };

/**
 * The extra root of a lower molar, if it has one: a root and not a canal decides.
 * Takes the tooth and its roots. One mesial and one distal root are the ordinary two; so are a mesiobuccal with a
 * mesiolingual root. What is left over is extra: on the lingual side an entomolaris, on the buccal side a paramolaris;
 * the lingual one is named where both are present.
 * @source common practice; docs/methods/canals, C7
 */
export function extraRoot(tooth: ToothFacts, roots: readonly CanalRoot[]): ExtraRoot {
  if (tooth.arch !== "lower" || tooth.type !== "molar" || roots.length < 3) return { kind: "none" };
  const placed = roots.map((root) => ({ root, end: root.name.slice(0, 1), side: sideOfRoot(root) }));
  const mesial = placed.filter(({ end }) => end === "M");
  const distal = placed.filter(({ end }) => end === "D");
  const others = placed.filter(({ end }) => end !== "M" && end !== "D");
  const extras = [...afterOrdinaryMesial(mesial), ...afterOrdinaryDistal(distal), ...others];
  return nameOf(extras);
}

/** The side of a root: as recorded, else as its name says (B, L, P, and MB, ML, DB, DL). */
export function sideOfRoot(root: CanalRoot): CanalRoot["side"] {
  if (root.side !== undefined) return root.side;
  const said = /^[MD]?([BLP])$/.exec(root.name)?.[1];
  if (said === undefined) return undefined;
  return said === "B" ? "buccal" : "lingual";
}

function afterOrdinaryMesial(roots: readonly Placed[]): readonly Placed[] {
  const plain = roots.find(({ side }) => side === undefined);
  if (plain !== undefined) return roots.filter((root) => root !== plain);
  const buccal = roots.find(({ side }) => side === "buccal");
  const lingual = roots.find(({ side }) => side === "lingual");
  if (buccal !== undefined && lingual !== undefined) return roots.filter((root) => root !== buccal && root !== lingual);
  return roots.slice(1);
}

/** The ordinary distal root is the one without a side, else the buccal one. */
function afterOrdinaryDistal(roots: readonly Placed[]): readonly Placed[] {
  const ordinary =
    roots.find(({ side }) => side === undefined) ?? roots.find(({ side }) => side === "buccal") ?? roots[0];
  return roots.filter((root) => root !== ordinary);
}

function nameOf(extras: readonly Placed[]): ExtraRoot {
  const lingual = extras.find(({ side }) => side === "lingual");
  if (lingual !== undefined) return { kind: "named", name: "radix entomolaris", root: lingual.root.name };
  const buccal = extras.find(({ side }) => side === "buccal");
  if (buccal !== undefined) return { kind: "named", name: "radix paramolaris", root: buccal.root.name };
  const [first] = extras;
  return first === undefined ? { kind: "none" } : { kind: "sideUnknown", root: first.root.name };
}
