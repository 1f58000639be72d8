import type { UseQueryResult } from "@tanstack/react-query";
import type { CaseView, ChangeLine } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { momentInWords } from "../../parts/days-in-words.ts";
import type { Refused } from "../../record/api.ts";

interface StoodBannerOptions {
  readonly change: ChangeLine;
  readonly reading: Pick<UseQueryResult<CaseView, Refused>, "error" | "isPending">;
  readonly back: () => void;
}

/** Says that the case is shown as it stood, and that nothing can be changed there. */
export const StoodBanner = ({ change: { sequence, at }, reading, back }: StoodBannerOptions) => (
  <div className="stood-banner" role="status">
    <span>
      {reading.error?.message ??
        (reading.isPending
          ? `Reading the case as it stood after change ${sequence}`
          : `The case as it stood after change ${sequence}, ${momentInWords(at)}. It can only be read.`)}
    </span>
    <Button onClick={back}>Back to now</Button>
  </div>
);
