import type { UseQueryResult } from "@tanstack/react-query";
import type { CaseView } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import type { Refused } from "../../record/api.ts";

interface StoodBannerOptions {
  readonly sequence: number;
  readonly reading: Pick<UseQueryResult<CaseView, Refused>, "error" | "isPending">;
  readonly back: () => void;
}

/** Says that the case is shown as it stood, and that nothing can be changed there. */
export const StoodBanner = ({ sequence, reading, back }: StoodBannerOptions) => (
  <div className="stood-banner" role="status">
    <span>
      {reading.error?.message ??
        (reading.isPending
          ? `Reading the case as it stood after change ${sequence}`
          : `The case as it stood after change ${sequence}. It can only be read.`)}
    </span>
    <Button onClick={back}>Back to now</Button>
  </div>
);
