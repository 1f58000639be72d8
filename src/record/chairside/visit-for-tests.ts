import type { BodyOf } from "../parts.ts";

/** A visit in which nothing is noted yet. */
export const emptyVisit: BodyOf<"visit"> = {
  ...{ on: "2026-03-12", aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: false },
  ...{ isolation: { rubberDam: "notRecorded" }, magnification: "notRecorded", anaesthetic: [], canals: [], lots: [] },
  ...{ irrigation: [], instruments: [], solvent: [], films: [], flareUp: "notRecorded", told: "", note: "" },
};
