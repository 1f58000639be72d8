import type { Clash } from "../../../../../ledger/irrigant-ahead.ts";
import { sentenceInWords } from "../../../../words/value-words.ts";
import { sourcesInWords } from "./sources-in-words.ts";

/** One pair of solutions that met, or would: what happens, what to do, whose word it is. */
export const ClashTold = ({ clash }: { readonly clash: Clash }) => (
  <div className="clash">
    <p>
      <strong>
        ▲ {sentenceInWords(clash.first)} and {clash.second}
      </strong>
    </p>
    <p>{sentenceInWords(clash.what)}</p>
    <p>
      <strong>Remedy:</strong> {sentenceInWords(clash.remedy)}
    </p>
    {clash.worstCase && (
      <p>
        Were all of it to react: {clash.worstCase.chlorineMg.toFixed(1)} mg of chlorine, as gas{" "}
        {clash.worstCase.chlorineMl.toFixed(1)} ml.
      </p>
    )}
    <p className="quiet">{sourcesInWords(clash.source, clash.mark)}</p>
  </div>
);
