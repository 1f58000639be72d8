import { Refusal } from "../refusal.ts";

/**
 * What `run` gives, with the paths of a refusal's faults moved under the place of the input that was handed on.
 * Takes the path of that place, as `uses[1].course`.
 * @throws Refusal the same one, its faults under the path.
 */
export function underPath<Given>(path: string, run: () => Given): Given {
  try {
    return run();
  } catch (thrown) {
    if (!(thrown instanceof Refusal)) throw thrown;
    const faults = thrown.faults.map((fault) => ({ ...fault, path: `${path}.${fault.path}` }));
    throw new Refusal(thrown.code, thrown.message, thrown.facts, faults);
  }
}
