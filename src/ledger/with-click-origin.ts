import type { InputPath } from "../record/ledger-entry.ts";
import type { Settings } from "../record/settings.ts";

const setting = "settings/clickSigmaPx";

/**
 * What a topic is asked, with the exercise named beside every click error that it was measured by; the entry keeps it, so
 * that it is told also when the settings have moved on. Where the error is assumed nothing is added.
 */
export function withClickOrigin<Asked extends { readonly inputPaths: readonly InputPath[] }>(
  asked: Asked,
  { clickSigmaFrom }: Settings,
): Asked {
  if (clickSigmaFrom === undefined) return asked;
  const record = `${clickSigmaFrom.exerciseId}/answer/sigmaPx`;
  const inputPaths = asked.inputPaths.flatMap((path) =>
    path.record === setting ? [path, { input: path.input, record }] : [path],
  );
  return { ...asked, inputPaths };
}
