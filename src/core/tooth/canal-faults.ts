import type { Fault } from "../refusal.ts";
import { type CanalRoot, canalNames, canalsAt, canalsOfCShape, cShapeAt } from "./canal-root.ts";
import { sideOfRoot } from "./extra-root.ts";
import type { ToothFacts } from "./teeth.ts";

/**
 * Every contradiction in a tooth's roots that a schema can't see, each with its path.
 * Takes the tooth and its roots; gives an empty list where the roots can be.
 * @source plane counting; docs/methods/canals, C9
 */
export function canalFaults(tooth: ToothFacts, roots: readonly CanalRoot[]): Fault[] {
  return [
    ...roots.flatMap((root, at) => [
      ...levelFaults(root, at),
      ...orificeFaults(root, at),
      ...sideFaults(tooth, root, at),
    ]),
    ...repeatedRoots(roots),
    ...repeatedCanals(roots),
  ];
}

function levelFaults(root: CanalRoot, at: number): Fault[] {
  return root.levels.flatMap((level, step) => {
    const path = `roots[${at}].levels[${step}]`;
    const canals = canalsAt(level);
    const shape = cShapeAt(level);
    if (shape === undefined) return canals === 0 ? [{ path, says: "0 canals are accepted only with cShape C5" }] : [];
    if (shape === "C5" && step === 0) return [{ path, says: "C5 has no lumen and can't be the level of the orifice" }];
    const { least, most } = canalsOfCShape(shape);
    if (canals >= least && canals <= most) return [];
    const accepted = least === most ? `${least}` : `${least} to ${most}`;
    return [{ path, says: `${canals} canals do not go with cShape ${shape}, which has ${accepted}` }];
  });
}

function orificeFaults(root: CanalRoot, at: number): Fault[] {
  const [first] = root.levels;
  if (root.orifices === undefined || first === undefined || root.orifices.length === canalsAt(first)) return [];
  const says = `${root.orifices.length} orifices are named where the first level has ${canalsAt(first)}`;
  return [{ path: `roots[${at}].orifices`, says }];
}

function sideFaults(tooth: ToothFacts, root: CanalRoot, at: number): Fault[] {
  const named = sideOfRoot({ name: root.name, levels: root.levels });
  const faults: Fault[] = [];
  if (root.side !== undefined && named !== undefined && named !== root.side)
    faults.push({ path: `roots[${at}].side`, says: `${root.side} contradicts the root's name ${root.name}` });
  if (tooth.arch === "lower" && /^[MD]?P$/.test(root.name))
    faults.push({
      path: `roots[${at}].name`,
      says: `${root.name} names the palatal side, which a lower tooth does not have`,
    });
  return faults;
}

function repeatedRoots(roots: readonly CanalRoot[]): Fault[] {
  const names = roots.map((root) => root.name);
  return names.flatMap((name, at) =>
    names.indexOf(name) < at
      ? [{ path: `roots[${at}].name`, says: `${name} is already the name of another root` }]
      : [],
  );
}

/** Canals are spoken of without their root, so a name stands once in a tooth. Roots of one name are told of above. */
function repeatedCanals(roots: readonly CanalRoot[]): Fault[] {
  const seen = new Set<string>();
  return roots.flatMap((root, at) => {
    const twice = canalNames(root).filter((name) => seen.has(name) || !seen.add(name));
    if (twice.length === 0 || roots.findIndex((other) => other.name === root.name) < at) return [];
    return [{ path: `roots[${at}].orifices`, says: `${twice.join(", ")} is already the name of another canal` }];
  });
}
